import type { Course, MoveNode, NodeRef } from '../types.ts';
import { blockAt } from './node-at.ts';

/**
 * The moves that lead to a node of a `moves` or `game` block, first to last, through the blocks that its block starts
 * from. If those form a circle, only the moves of its own block. Empty for other blocks.
 */
export function pathTo(course: Course, to: NodeRef): MoveNode[] {
  const path: MoveNode[] = [];
  const seen = new Set<string>();
  for (let ref: NodeRef | undefined = to; ref; ) {
    const block = blockAt(course, ref);
    const name = `${ref.block} ${ref.chapter}`;
    if ((block?.kind !== 'moves' && block?.kind !== 'game') || seen.has(name)) break;
    seen.add(name);
    for (let node = block.nodes[ref.node]; node?.parent !== undefined; ) {
      path.push(node);
      node = block.nodes[node.parent];
    }
    const from: string | undefined = block.kind === 'moves' ? block.from?.name : undefined;
    ref = from === undefined ? undefined : course.labels[from]?.ref;
  }
  return path.reverse();
}
