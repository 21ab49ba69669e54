import type { CourseTable } from '../contract/course-table.ts';
import type { MoveWords } from '../contract/words.ts';
import { moveText, type PathMove, placeHref } from '../lookup/index.ts';
import { element } from './element.ts';

/**
 * A move of the course as a link to where it stands, set by what it is to the course, and the word
 * for that: seen where the type alone would not tell an option from a bad move.
 */
export function courseMove(table: CourseTable, step: PathMove, words: MoveWords): Node[] {
  const { move } = step;
  // A course for both sides has no side whose moves would be advice.
  const kind = table.side === 'both' && move.kind === 'option' ? 'reply' : move.kind;
  const [place] = move.at;
  const link = element('a', { class: `course-move ${kind}` }, moveText(step, words.letters));
  if (place !== undefined) link.href = placeHref(table, move.to, place);
  const word = words.kinds[kind];
  if (word === '') return [link];
  const seen = kind === 'advice' ? 'unseen' : 'move-kind';
  return [link, element('span', { class: seen }, ` ${word}`)];
}
