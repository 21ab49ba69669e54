import type { CourseTable } from '../../contract/course-table.ts';
import { spreadPlacement } from './spread-placement.ts';

export interface FoundPlacement {
  /** Indices of the positions that have these pieces and no others. */
  readonly exact: readonly number[];
  /** Indices of those that have others beside. */
  readonly holding: readonly number[];
}

/** A letter or a dot for each of the 64 squares of every position, in the order of a FEN. */
const boards = new WeakMap<CourseTable, readonly string[]>();

/** The positions that have all pieces of a placement, the first field of a FEN, where they stand. */
export function findPlacement(table: CourseTable, placement: string): FoundPlacement {
  const exact: number[] = [];
  const holding: number[] = [];
  const wanted = spreadPlacement(placement);
  const pieces = [...wanted].flatMap((letter, at) => (letter === '.' ? [] : [at]));
  if (pieces.length === 0) return { exact, holding };
  for (const [index, board] of boardsOf(table).entries()) {
    if (!pieces.every((at) => board[at] === wanted[at])) continue;
    (board === wanted ? exact : holding).push(index);
  }
  return { exact, holding };
}

function boardsOf(table: CourseTable): readonly string[] {
  let all = boards.get(table);
  if (all === undefined) {
    all = table.positions.map(({ key }) => spreadPlacement(key.slice(0, key.indexOf(' '))));
    boards.set(table, all);
  }
  return all;
}
