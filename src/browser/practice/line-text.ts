import { numberSign } from '../../chess/letters.ts';
import type { PracticeWords } from '../../contract/words.ts';
import { noteName } from '../../lookup/index.ts';
import { make } from '../element.ts';
import type { Step } from './practice-course.ts';
import { type Session, turnAfter } from './session.ts';
import { printedNodes } from './words.ts';

/** So many moves are shown of a line; the board shows the rest. */
const shown = 8;

/** The last moves of the line, the very last one standing out. */
export function lineText(session: Session, words: PracticeWords): (Node | string)[] {
  const { line } = session;
  const earliest = Math.max(0, line.length - shown);
  // From a move of White's on, which has its number.
  const isBlack = earliest > 0 && turnAfter(session, earliest).color === 'black';
  const first = isBlack ? earliest - 1 : earliest;
  const moves = line.slice(first).flatMap(({ move }, index) => {
    const at = first + index;
    const turn = turnAfter(session, at);
    const sign =
      turn.color === 'white' || index === 0 ? numberSign(turn).replace(/\.$/, '.\u00a0') : '';
    const last = at === line.length - 1;
    const text = make(last ? 'b' : 'span', '', sign, ...printedNodes(move.san, words));
    return [index === 0 ? '' : ' ', text];
  });
  return [first > 0 ? '… ' : '', ...moves];
}

/** The author's comments on a move of the course. The site has rendered and cleaned them. */
export function noteOf(
  { course }: Pick<Session, 'course'>,
  { from, move }: Step,
): HTMLElement | undefined {
  const html = course.notes.notes[noteName(from, move.san)]?.html ?? '';
  if (html === '') return undefined;
  const note = make('span', 'practice-note');
  note.innerHTML = html;
  return note;
}
