import type { CourseTable, TableMove, TablePosition } from '../contract/course-table.ts';

const indices = new WeakMap<CourseTable, ReadonlyMap<string, number>>();

/** Where in the table the position with a key stands; `undefined` if the course has it not. */
export function positionOf(table: CourseTable, key: string): number | undefined {
  let index = indices.get(table);
  if (index === undefined) {
    index = new Map(table.positions.map((position, at) => [position.key, at]));
    indices.set(table, index);
  }
  return index.get(key);
}

/** The course's move in a position by its canonical SAN. */
export function moveOf(position: TablePosition, san: string): TableMove | undefined {
  return position.moves.find((move) => move.san === san);
}
