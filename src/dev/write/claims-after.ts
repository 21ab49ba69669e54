import { claimsAt } from '../../check/index.ts';
import { playSan } from '../../chess/index.ts';
import { inLettersOf } from '../../read/index.ts';
import type { PlaceInCourse } from './find-place.ts';

/** The claims that are true at a place after some more moves, the most telling first. */
export function claimsAfter(
  { course, chapter, block, node }: PlaceInCourse,
  moves: readonly string[],
): string[] {
  let before = block.nodes[node?.parent ?? -1]?.position;
  let position = node?.position;
  for (const san of moves) {
    const played = position && playSan(position, san);
    if (played === undefined) return [];
    before = position;
    position = played.after;
  }
  if (position === undefined) return [];
  // New moves castle where the course cannot know of it: then nothing is said of who has castled.
  const tree =
    node && moves.length === 0
      ? { nodes: block.nodes, castled: block.castled, index: node.index }
      : undefined;
  const claims = claimsAt({ position, before, tree }, course);
  return claims.map((claim) => inLettersOf(chapter.pieces, claim));
}
