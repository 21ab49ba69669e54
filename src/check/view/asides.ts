import type { CourseIndex, NodesOfBlock, Occurrence } from './course-index.ts';

/**
 * Whether something stands at or behind a move of the course's side that is called bad, or else one that is an
 * option.
 */
export type Aside = 'bad' | 'option' | undefined;

/** What is known of names and of the nodes of blocks, for an index. */
const asides = new WeakMap<CourseIndex, Map<string, Aside>>();

/** The same of a named position, also through the blocks that its block starts from. */
export function asideAt(index: CourseIndex, name: string): Aside {
  const known = asides.get(index) ?? new Map<string, Aside>();
  asides.set(index, known);
  // Down from the first block: those between start from each other.
  const chain: string[] = [];
  const seen = new Set<string>();
  for (let at: string | undefined = name; at !== undefined && !seen.has(at); ) {
    if (known.has(at)) break;
    seen.add(at);
    chain.push(at);
    at = fromOf(index, at);
  }
  for (const each of chain.reverse()) {
    const ref = index.names.get(each)?.ref;
    const own = ref && asideIn(index, `${ref.chapter} ${ref.block}`).get(ref.node);
    const before = known.get(fromOf(index, each) ?? '');
    known.set(each, own === 'bad' ? own : (before ?? own));
  }
  return known.get(name);
}

/** The name that the block of a name starts from. */
function fromOf({ names, joined }: CourseIndex, name: string): string | undefined {
  const ref = names.get(name)?.ref;
  return ref && joined.get(`${ref.chapter} ${ref.block}`)?.from;
}

/** Whether a move is the course's advice: not if its block starts from a position that stands aside. */
export function isAdvised(index: CourseIndex, { chapter, block, node }: Occurrence): boolean {
  if (!node.advised) return false;
  const from = index.joined.get(`${chapter} ${block}`)?.from;
  return from === undefined || asideAt(index, from) === undefined;
}

const asidesInBlocks = new WeakMap<NodesOfBlock, ReadonlyMap<number, Aside>>();

/** The same of the nodes of one block, from its start on. */
function asideIn({ blocks }: CourseIndex, block: string): ReadonlyMap<number, Aside> {
  const nodes = blocks.get(block);
  if (!nodes) return new Map();
  const known = asidesInBlocks.get(nodes);
  if (known) return known;
  const found = new Map<number, Aside>();
  // Parents stand before their children.
  for (const there of nodes) {
    if (!there) continue;
    const { node } = there;
    const before = found.get(node.parent ?? -1);
    found.set(node.index, node.rejected ? 'bad' : (before ?? (node.option ? 'option' : undefined)));
  }
  asidesInBlocks.set(nodes, found);
  return found;
}
