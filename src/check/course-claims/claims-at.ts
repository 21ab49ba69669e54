import type { Position } from '../../chess/index.ts';
import { type Course, castledBefore, type MoveNode } from '../../model/index.ts';
import { type ClaimsWanted, claimsThatHold } from '../claims/index.ts';

export interface ClaimPlace {
  readonly position: Position;
  readonly before?: Position | undefined;
  /** The tree that it stands in, and where. */
  readonly tree?:
    | {
        readonly nodes: readonly MoveNode[];
        readonly castled: Parameters<typeof castledBefore>[0]['castled'];
        readonly index: number;
      }
    | undefined;
}

/** The claims that are true in a position of a course, most telling first. */
export function claimsAt(
  { position, before, tree }: ClaimPlace,
  course: Pick<Course, 'settings' | 'graph'>,
  wanted: ClaimsWanted = {},
): string[] {
  const covered = ({ key }: Position) => course.graph[key]?.moves.map(({ san }) => san) ?? [];
  return claimsThatHold(
    {
      position,
      ...(before && { before }),
      side: course.settings.side,
      covered: covered(position),
      coveredFrom: covered,
      castlings: () => (tree ? castledBefore(tree, tree.index) : []),
      labelled: () => undefined,
    },
    wanted,
  );
}
