import { initialPosition } from '../../chess/initial.ts';
import type { CourseTable } from '../../contract/course-table.ts';
import { pathsOf } from '../paths.ts';
import type { GameMove } from './types.ts';

/**
 * The shortest path from the initial position to each position of a course by its own moves;
 * absent for positions that the course reaches only from a set-up one.
 */
export function linesOf(table: CourseTable): (index: number) => readonly GameMove[] | undefined {
  const paths = pathsOf(table);
  return (index) => {
    const path = paths.to(index);
    const root = path[0]?.from ?? index;
    if (table.positions[root]?.key !== initialPosition.key) return undefined;
    return path.map(({ move: { san } }, ply) => ({
      san,
      color: ply % 2 === 0 ? 'white' : 'black',
      number: Math.floor(ply / 2) + 1,
    }));
  };
}
