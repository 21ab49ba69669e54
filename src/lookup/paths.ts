import type { Color } from '../chess/index.ts';
import { initialPosition } from '../chess/initial.ts';
import type { CourseTable, TableMove } from '../contract/course-table.ts';

/** A move on the path to a position. */
export interface PathMove {
  readonly from: number;
  readonly move: TableMove;
  /** The full-move number, and who moves. */
  readonly number: number;
  readonly color: Color;
}

/**
 * The course as a tree: every position hangs on one move, by which it is reached soonest, and of
 * two equally long paths by the one that the course tells first.
 */
export interface Paths {
  /** Indices of the positions that no move leads to from an earlier one: the start comes first. */
  readonly roots: readonly number[];
  /** Indices of the positions in which a move to this one is played, in the order of the tree. */
  into(position: number): readonly number[];
  /** The move that the position hangs on; absent for a root. */
  last(position: number): PathMove | undefined;
  /** The moves from the root to the position. */
  to(position: number): readonly PathMove[];
  /** A move with its number, as it is played from a position on its path. */
  step(from: number, move: TableMove): PathMove;
}

const known = new WeakMap<CourseTable, Paths>();

export function pathsOf(table: CourseTable): Paths {
  let paths = known.get(table);
  if (paths === undefined) {
    paths = makePaths(table);
    known.set(table, paths);
  }
  return paths;
}

function makePaths({ positions }: CourseTable): Paths {
  const lasts: (PathMove | undefined)[] = [];
  const incoming: (readonly number[] | undefined)[] = positions.map(() => undefined);
  /** The full-move number in each position, once it is reached. */
  const numbers: number[] = [];
  const roots: number[] = [];

  const step = (from: number, move: TableMove): PathMove => ({
    from,
    move,
    number: numbers[from] ?? 1,
    color: sideIn(positions[from]?.key),
  });

  const grow = (root: number): void => {
    roots.push(root);
    numbers[root] = positions[root]?.number ?? 1;
    const queue = [root];
    for (const from of queue) {
      for (const move of positions[from]?.moves ?? []) {
        incoming[move.to] = [...(incoming[move.to] ?? []), from];
        if (numbers[move.to] !== undefined) continue;
        const taken = step(from, move);
        lasts[move.to] = taken;
        numbers[move.to] = taken.number + (taken.color === 'black' ? 1 : 0);
        queue.push(move.to);
      }
    }
  };
  // Where several courses stand in one table, each has its start.
  positions.forEach(({ key }, index) => {
    if (key === initialPosition.key) grow(index);
  });
  positions.forEach((_, index) => {
    if (numbers[index] === undefined) grow(index);
  });

  const to = (position: number): PathMove[] => {
    const path: PathMove[] = [];
    for (let last = lasts[position]; last !== undefined; last = lasts[last.from]) path.push(last);
    return path.reverse();
  };
  return {
    roots,
    into: (position) => incoming[position] ?? [],
    last: (position) => lasts[position],
    to,
    step,
  };
}

function sideIn(key = ''): Color {
  return key.split(' ')[1] === 'b' ? 'black' : 'white';
}
