import { fill } from '../../../contract/sentence.ts';
import { make } from '../../element.ts';
import { words } from './words.ts';

/** A line that stands under a field and says so while a directive is typed there. */
export function makeTypedHelp(field: HTMLTextAreaElement): HTMLElement {
  const line = make('p', 'write-help');
  line.setAttribute('role', 'status');
  const show = () => {
    line.textContent = aboutDirective(field.value);
    line.hidden = line.textContent === '';
  };
  field.addEventListener('input', show);
  show();
  return line;
}

/**
 * What to say of a directive that is typed in a comment: there it stays plain text, and what has a control of its own
 * is set by that. Empty where none is typed.
 */
export function aboutDirective(comment: string): string {
  const [, typed] = /(?<![\w:\\]):([a-z]+)\[/.exec(comment) ?? [];
  if (typed === undefined) return '';
  const { claim, mark, here, other } = words.control;
  const ways: Readonly<Record<string, string>> = {
    claim,
    mark,
    plan: mark,
    threat: mark,
    guard: mark,
    here,
  };
  const way = Object.hasOwn(ways, typed) ? ways[typed] : other;
  return `${fill(words.plainText, { name: `:${typed}[` })} ${way}`;
}
