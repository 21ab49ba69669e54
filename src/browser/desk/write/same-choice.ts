import type { LookAnswer, NamedMeeting } from '../../../contract/desk-write.ts';
import { fill } from '../../../contract/sentence.ts';
import { element, make } from '../../element.ts';
import type { Said } from './said.ts';
import { words } from './words.ts';

/**
 * The name that is to be said of a position which the course has already. At the first such position of a line it
 * is said unless the author would rather not: what follows is then the same line.
 * @param after how many new moves lead there.
 */
export function sameAt(
  { meetings }: Pick<LookAnswer, 'meetings'>,
  after: number,
  { same }: Said,
): string | undefined {
  const meeting = meetings.find((each) => each.after === after);
  return (same ?? meeting === meetings[0]) ? meeting?.name : undefined;
}

export function makeSameChoice(
  { name, file, line }: NamedMeeting,
  isChosen: boolean,
  onChoose: (isChosen: boolean) => void,
): HTMLElement {
  const input = element('input', { type: 'checkbox' });
  input.checked = isChosen;
  input.dataset.keep = 'same';
  input.addEventListener('change', () => onChoose(input.checked));
  const sentence = fill(words.same, { name, file, line: String(line) });
  return make('p', 'write-same', make('label', '', input, ` ${sentence}`));
}
