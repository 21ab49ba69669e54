import type { CourseTable, TableMove } from '../../contract/course-table.ts';
import type { PathMove, Paths } from '../../lookup/index.ts';

/** Moves that the course has without a choice between them. */
export interface CourseLine {
  readonly moves: readonly PathMove[];
  /** Index of the position that it ends in. */
  readonly end: number;
  /** The moves that the course goes on with; none where it ends or is told elsewhere. */
  readonly onward: readonly TableMove[];
  /** Whether its last position hangs on another move: what follows is told there. */
  readonly meets: boolean;
}

/** The line that a move begins: on to a choice, to its end, or to where it meets another. */
export function lineFrom(
  { positions }: CourseTable,
  paths: Paths,
  from: number,
  first: TableMove,
): CourseLine {
  const moves: PathMove[] = [];
  let at = from;
  let next: TableMove | undefined = first;
  while (next !== undefined) {
    moves.push(paths.step(at, next));
    const home = paths.last(next.to);
    if (home?.move !== next) return { moves, end: next.to, onward: [], meets: true };
    at = next.to;
    const onward = positions[at]?.moves ?? [];
    if (onward.length !== 1) return { moves, end: at, onward, meets: false };
    next = onward[0];
  }
  return { moves, end: at, onward: [], meets: false };
}
