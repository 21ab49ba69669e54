import type { PlayedMove } from '../chess/index.ts';
import type { Block, Course, NodeRef } from '../model/index.ts';
import { occurrenceAt } from './occurrences.ts';

type Castlings = readonly PlayedMove[];

/** For the nodes of a block, the castlings that led to each. */
const known = new WeakMap<Block, readonly Castlings[]>();

/**
 * The castlings among the moves that led to a node, through the blocks that its block starts from. Of
 * each block they are found once, for all its nodes: a claim at the end of a long line would else look
 * back through all of it.
 */
export function castlingsTo(course: Course, ref: NodeRef): Castlings {
  /** The blocks on the way whose castlings are not known, and the node that each is left at. */
  const open: { readonly block: Block; readonly node: number }[] = [];
  const seen = new Set<Block>();
  let before: Castlings = [];
  for (let at: NodeRef | undefined = ref; at; ) {
    const { block, node } = occurrenceAt(course, at);
    const found = known.get(block);
    if (found) {
      before = found[node.index] ?? [];
      break;
    }
    // Blocks that start from each other in a circle have a finding of their own.
    if (seen.has(block)) break;
    seen.add(block);
    open.push({ block, node: node.index });
    const from: string | undefined = block.kind === 'moves' ? block.from?.name : undefined;
    at = from === undefined ? undefined : course.labels[from]?.ref;
  }
  for (const { block, node } of open.reverse()) {
    const all = castlingsIn(block, before);
    known.set(block, all);
    before = all[node] ?? [];
  }
  return before;
}

/** Parents stand before their children. */
function castlingsIn({ nodes }: Block, before: Castlings): readonly Castlings[] {
  const all: Castlings[] = [];
  for (const { parent, move } of nodes) {
    const earlier = parent === undefined ? before : (all[parent] ?? before);
    all.push(move?.san.startsWith('O-O') ? [...earlier, move] : earlier);
  }
  return all;
}
