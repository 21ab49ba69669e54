import { type Piece, readBoard, type Square } from '../../chess/index.ts';
import { matchPattern, modelLimits, type PatternBlock } from '../../model/index.ts';
import type { CourseIndex } from './course-index.ts';
import { firstOf } from './find-twins.ts';
import type { PatternPlace } from './questions.ts';

/**
 * The positions of a course that have a pattern, in the order of the course; undefined where the patterns of the
 * course would be compared with too many positions, which has a finding of its own.
 */
export function findMatches(
  index: CourseIndex,
  pattern: Pick<PatternBlock, 'pieces' | 'empty' | 'reversed'>,
): readonly PatternPlace[] | undefined {
  if (index.patterns * index.at.size > modelLimits.matched) return undefined;
  const found: PatternPlace[] = [];
  for (const [key, board] of boardsOf(index)) {
    const match = matchPattern(pattern, board);
    if (!match) continue;
    const at = index.at.get(key) ?? [];
    found.push({
      key,
      name: firstOf(at)?.node.name ?? '',
      reversed: match.reversed,
      refuted: at.every(({ node }) => node.refuted),
    });
  }
  return found;
}

type Boards = ReadonlyMap<string, ReadonlyMap<Square, Piece>>;

const known = new WeakMap<CourseIndex, Boards>();

/** The boards of all positions, made once for all patterns. */
function boardsOf(index: CourseIndex): Boards {
  const made =
    known.get(index) ??
    new Map([...index.at.keys()].map((key) => [key, readBoard({ fen: key, key })]));
  known.set(index, made);
  return made;
}
