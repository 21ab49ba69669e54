import { type LegalMove, listMoves, type Position } from '../../../chess/index.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import type { BoardMove } from '../../board/board-state.ts';
import { printed } from '../view/words.ts';
import type { MoveFrom, PracticeCourse } from './practice-course.ts';

const known = new WeakMap<PracticeCourse, Map<number, Position>>();

/** A position of the course for the rules; its move counters are not the line's. */
export function positionAt(course: PracticeCourse, index: number): Position {
  const positions = known.get(course) ?? new Map<number, Position>();
  known.set(course, positions);
  const key = course.table.positions[index]?.key ?? '';
  const position = positions.get(index) ?? { key, fen: `${key} 0 1` };
  positions.set(index, position);
  return position;
}

/** The squares of a move of the course. @throws if it is not legal, which the check rules out. */
export function squaresOfStep(course: PracticeCourse, { from, move }: MoveFrom): LegalMove {
  const found = listMoves(positionAt(course, from)).find(({ san }) => san === move.san);
  if (found === undefined) throw new Error(`${move.san} is not legal in position ${from}`);
  return found;
}

/** A move that can be made on the board, with its canonical SAN. */
export interface NamedMove extends BoardMove {
  readonly canonical: string;
}

export function movesAt(course: PracticeCourse, index: number, words: PracticeWords): NamedMove[] {
  return listMoves(positionAt(course, index)).map(({ san, from, to, promotion }) => ({
    san: printed(san, words),
    canonical: san,
    from,
    to,
    promotion,
  }));
}
