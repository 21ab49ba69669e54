import { initialPosition } from '../../chess/initial.ts';
import { positionOf } from '../find.ts';
import type { CourseTable } from '../types.ts';
import type { GameMove } from './types.ts';

/**
 * The shortest way from the initial position to each position of a course by its own moves;
 * absent for positions that the course reaches only from a set-up one.
 */
export function linesOf(table: CourseTable): (index: number) => readonly GameMove[] | undefined {
  const from = new Map<number, { readonly index: number; readonly san: string } | undefined>();
  const first = positionOf(table, initialPosition.key);
  const open = first === undefined ? [] : [first];
  if (first !== undefined) from.set(first, undefined);
  for (const index of open) {
    for (const { san, to } of table.positions[index]?.moves ?? []) {
      if (from.has(to)) continue;
      from.set(to, { index, san });
      open.push(to);
    }
  }
  return (index) => {
    if (!from.has(index)) return undefined;
    const line: string[] = [];
    for (let step = from.get(index); step !== undefined; step = from.get(step.index)) {
      line.push(step.san);
    }
    return line.reverse().map((san, ply) => ({
      san,
      color: ply % 2 === 0 ? 'white' : 'black',
      number: Math.floor(ply / 2) + 1,
    }));
  };
}
