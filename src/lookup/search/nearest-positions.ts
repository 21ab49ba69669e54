import type { CourseTable } from '../../contract/course-table.ts';
import { spreadPlacement } from './spread-placement.ts';

/** A position of the course that is much like another one. */
export interface NearPosition {
  /** Index in the table. */
  readonly position: number;
  /** On how many squares they differ. */
  readonly squares: number;
}

/**
 * The positions of a course that differ from another one on the fewest squares, where the same side is to move; the
 * nearest first, at most `limit` of them, and none that differs on more than `most` squares.
 */
export function nearestPositions(
  table: CourseTable,
  key: string,
  { limit, most }: { readonly limit: number; readonly most: number },
): NearPosition[] {
  const [placement = '', side] = key.split(' ');
  const wanted = spreadPlacement(placement);
  return table.positions
    .flatMap(({ key: other }, position) => {
      const [there = '', turn] = other.split(' ');
      if (turn !== side || other === key) return [];
      const board = spreadPlacement(there);
      const squares = [...wanted].filter((letter, at) => letter !== board[at]).length;
      return squares > 0 && squares <= most ? [{ position, squares }] : [];
    })
    .sort((a, b) => a.squares - b.squares)
    .slice(0, limit);
}
