import type { PracticeWords } from '../../../contract/words.ts';
import { drawBoardInPage } from '../../../draw/page-board.ts';
import { moveOf, placeHref } from '../../../lookup/index.ts';
import { element, make } from '../../element.ts';
import { inLanguageOf } from '../../in-language-of.ts';
import { positionAt, squaresOfStep } from '../session/board-moves.ts';
import { type MoveFrom, type PracticeCourse, viewOf } from '../session/practice-course.ts';
import type { Turn } from '../session/session.ts';
import { inWords } from './sentences.ts';
import { markSign } from './strip.ts';

/** The course's move in a position, as it stands in the table. */
export function adviceStep(course: PracticeCourse, position: number): MoveFrom | undefined {
  const [advice] = course.itemAt.get(position)?.advice ?? [];
  const here = course.table.positions[position];
  const move = advice === undefined ? undefined : here && moveOf(here, advice);
  return move && { from: position, move };
}

/** A position that was missed: its board with the course's move, what is said of it, and the way to its place. */
export function positionCard(
  course: PracticeCourse,
  step: MoveFrom,
  turn: Turn,
  words: PracticeWords,
  ...said: readonly (string | Node)[]
): HTMLElement {
  const { from, move } = step;
  const picture = make('div', 'practice-picture');
  picture.innerHTML = drawBoardInPage({
    placement: positionAt(course, move.to).fen,
    view: viewOf(course, from),
    lastMove: squaresOfStep(course, { from, move }),
    coordinates: false,
  });
  const name = make('b', '', markSign('wrong'), ' ', inWords(turn, move.san, words));
  const text = make('div', '', make('p', '', name, ' ', ...said));
  const home = course.homeOf?.(from);
  if (home !== undefined) {
    text.prepend(element('p', { class: 'quiet', ...inLanguageOf(home) }, home.shortTitle));
  }
  const [place] = move.at;
  if (place !== undefined) {
    const href = placeHref(course.table, move.to, place);
    text.append(make('p', '', element('a', { href }, words.practice.readThere)));
  }
  return make('li', 'practice-card', picture, text);
}
