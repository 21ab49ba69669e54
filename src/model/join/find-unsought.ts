import type { Place } from '../../diagnostics/index.ts';
import type { ModelLimits } from '../model-limits.ts';
import type { CourseProblem } from '../types.ts';

/**
 * The patterns that are not looked for, since those before them would be compared with too many positions
 * together.
 * @param patterns the places of each chapter's patterns.
 * @param positions how many the course has.
 */
export function findUnsought(
  patterns: readonly (readonly Place[])[],
  positions: number,
  { matched }: Pick<ModelLimits, 'matched'>,
): CourseProblem[] {
  let looked = 0;
  return patterns.flat().flatMap((place): CourseProblem[] => {
    looked += positions;
    if (looked <= matched) return [];
    return [
      {
        rule: 'chapter-unreadable',
        place,
        message: `This pattern is not looked for: with those before it, it would be compared ${looked.toLocaleString('en')} times with a position.`,
        hint: 'Leave out patterns that say nothing, or divide the course into several.',
      },
    ];
  });
}
