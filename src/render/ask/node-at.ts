import { blockAt, type Course, type MoveNode, type NodeRef } from '../../model/index.ts';

/** A place in the moves of the course: of a block of moves or of a game. */
export function nodeAt(course: Course, ref: NodeRef): MoveNode | undefined {
  const block = blockAt(course, ref);
  return block?.kind === 'moves' || block?.kind === 'game' ? block.nodes[ref.node] : undefined;
}
