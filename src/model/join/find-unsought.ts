import type { Place } from '../../diagnostics/index.ts';
import type { ModelLimits } from '../model-limits.ts';
import type { CourseProblem } from '../types.ts';

/**
 * Reports the patterns that are not searched for because those before them already reach the limit of comparisons.
 * @param patterns the places of each chapter's patterns.
 * @param positions the number of positions in the course.
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
