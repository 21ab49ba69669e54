import {
  blockAt,
  type Course,
  type MoveNode,
  type NodeRef,
  outlinedNodeAt,
} from '../../model/index.ts';

/** The node of a reference, in a block of moves or a game. */
export function nodeAt(course: Course, ref: NodeRef): MoveNode | undefined {
  const block = blockAt(course, ref);
  return block?.kind === 'moves' || block?.kind === 'game' ? block.nodes[ref.node] : undefined;
}

/** The key of the position at such a place. */
export function keyAt(course: Course, ref: NodeRef): string | undefined {
  return outlinedNodeAt(course, ref)?.key ?? nodeAt(course, ref)?.position?.key;
}
