import { matchPattern, modelLimits, type PatternBlock } from '../../model/index.ts';
import { isAdvised } from './asides.ts';
import type { CourseIndex, PositionInCourse } from './course-index.ts';
import { firstOf, type PositionTold } from './find-twins.ts';

export interface PatternPlace extends PositionTold {
  /** Whether it has the pattern with the colours exchanged. */
  readonly reversed: boolean;
  /** Whether every line that has it runs through a move that the course calls bad. */
  readonly refuted: boolean;
  readonly advised?: { readonly san: string; readonly name: string };
}

/**
 * The positions of a course that have a pattern, in the order of the course; undefined where the patterns of the
 * course would be compared with too many positions, which has a finding of its own.
 */
export function findMatches(
  index: CourseIndex,
  pattern: Pick<PatternBlock, 'pieces' | 'empty' | 'reversed'>,
): readonly PatternPlace[] | undefined {
  if (index.patterns * index.positions.size > modelLimits.matched) return undefined;
  const found: PatternPlace[] = [];
  for (const position of positionsOf(index)) {
    const { key, at, from } = position;
    const match = matchPattern(pattern, position);
    if (!match) continue;
    const advice = from.find((each) => isAdvised(index, each))?.node;
    found.push({
      key,
      name: firstOf(at)?.node.name ?? '',
      reversed: match.reversed,
      refuted: at.every(({ node }) => node.refuted),
      ...(advice && { advised: { san: advice.san ?? '', name: advice.name } }),
    });
  }
  return found;
}

interface PositionToMatch extends PositionInCourse {
  readonly key: string;
}

const known = new WeakMap<CourseIndex, readonly PositionToMatch[]>();

/** The positions of a course as objects that stay the same, so that each board is read once for all patterns. */
function positionsOf(index: CourseIndex): readonly PositionToMatch[] {
  const made = known.get(index) ?? [...index.positions].map(([key, there]) => ({ key, ...there }));
  known.set(index, made);
  return made;
}
