import type { Course, MoveNode, NodeRef } from '../types.ts';
import { blockAt } from './node-at.ts';

/** A node on the way to another, and where it stands. */
export interface Step {
  readonly ref: NodeRef;
  readonly node: MoveNode;
}

/**
 * The moves that lead to a node, through the blocks that its block starts from, first to last; only those of its own
 * block where they start from each other.
 */
export function wayTo(course: Course, to: NodeRef): Step[] {
  const steps: Step[] = [];
  const seen = new Set<string>();
  for (let ref: NodeRef | undefined = to; ref; ) {
    const block = blockAt(course, ref);
    const name = `${ref.block} ${ref.chapter}`;
    if (!block || seen.has(name)) break;
    seen.add(name);
    for (let node = block.nodes[ref.node]; node?.parent !== undefined; ) {
      steps.push({ ref: { ...ref, node: node.index }, node });
      node = block.nodes[node.parent];
    }
    const from: string | undefined = block.kind === 'moves' ? block.from?.name : undefined;
    ref = from === undefined ? undefined : course.labels[from]?.ref;
  }
  return steps.reverse();
}
