import { element, make } from '../../element.ts';
import type { Said } from './said.ts';
import { words } from './words.ts';

/**
 * The fields for a name of the position, and what readers see in its place.
 * @param names those that it has.
 */
export function makeNaming(
  names: readonly string[],
  said: Said,
  onInput: (named: Partial<Pick<Said, 'name' | 'title'>>) => void,
): HTMLElement {
  const field = (key: 'name' | 'title', label: string) => {
    const input = element('input', { id: `write-${key}`, type: 'text', autocomplete: 'off' });
    input.value = said[key];
    input.dataset.keep = key;
    input.addEventListener('input', () => {
      input.removeAttribute('aria-invalid');
      onInput({ [key]: input.value });
    });
    return make('p', 'write-field', element('label', { for: input.id }, label), input);
  };
  const summary = names.length === 0 ? words.name : `${words.name} (${names.join(', ')})`;
  const details = make(
    'details',
    'write-naming',
    make('summary', '', summary),
    field('name', words.name),
    field('title', words.title),
    make('p', 'write-help', words.nameHelp),
  );
  details.open = said.name !== '';
  return details;
}
