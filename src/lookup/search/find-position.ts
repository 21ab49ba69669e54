import type { CourseTable } from '../../contract/course-table.ts';
import { positionOf } from '../find.ts';

/** In what two positions with the same pieces differ. */
export type Difference = 'turn' | 'castling' | 'en-passant';

export interface FoundPosition {
  /** What was looked for. */
  readonly key: string;
  /** Index of the position itself. */
  readonly exact?: number;
  /** Those with the same pieces on the same squares that are another position all the same. */
  readonly alike: readonly {
    readonly position: number;
    readonly differs: readonly Difference[];
  }[];
}

/** Looks a position up by its key (`Position.key`). */
export function findPosition(table: CourseTable, key: string): FoundPosition {
  const exact = positionOf(table, key);
  const [placement = '', ...fields] = key.split(' ');
  const alike = table.positions.flatMap(({ key: other }, position) => {
    if (position === exact || !other.startsWith(`${placement} `)) return [];
    const others = other.split(' ').slice(1);
    const differs = (['turn', 'castling', 'en-passant'] as const).filter(
      (_, field) => fields[field] !== others[field],
    );
    return [{ position, differs }];
  });
  return { key, ...(exact !== undefined && { exact }), alike };
}
