import type { Color } from '../chess/index.ts';
import { initialPosition } from '../chess/initial.ts';
import type { CourseTable, TableMove } from '../contract/course-table.ts';

/** A move on the way to a position. */
export interface WayMove {
  readonly from: number;
  readonly move: TableMove;
  /** The full-move number, and who moves. */
  readonly number: number;
  readonly color: Color;
}

/**
 * The course as a tree: every position hangs on one move, by which it is reached soonest, and of
 * two equally long ways by the one that the course tells first.
 */
export interface Ways {
  /** Indices of the positions that no move leads to from an earlier one: the start comes first. */
  readonly roots: readonly number[];
  /** Indices of the positions in which a move to this one is played, in the order of the tree. */
  into(position: number): readonly number[];
  /** The move that the position hangs on; absent for a root. */
  last(position: number): WayMove | undefined;
  /** The moves from the root to the position. */
  to(position: number): readonly WayMove[];
  /** A move with its number, as it is played from a position on its way. */
  step(from: number, move: TableMove): WayMove;
}

const known = new WeakMap<CourseTable, Ways>();

export function waysOf(table: CourseTable): Ways {
  let ways = known.get(table);
  if (ways === undefined) {
    ways = makeWays(table);
    known.set(table, ways);
  }
  return ways;
}

function makeWays({ positions }: CourseTable): Ways {
  const lasts: (WayMove | undefined)[] = [];
  const incoming: (readonly number[] | undefined)[] = positions.map(() => undefined);
  /** The full-move number in each position, once it is reached. */
  const numbers: number[] = [];
  const roots: number[] = [];

  const step = (from: number, move: TableMove): WayMove => ({
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

  const to = (position: number): WayMove[] => {
    const way: WayMove[] = [];
    for (let last = lasts[position]; last !== undefined; last = lasts[last.from]) way.push(last);
    return way.reverse();
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
