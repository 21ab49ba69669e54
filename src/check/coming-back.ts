import type { Block } from '../model/index.ts';

const none: ReadonlySet<number> = new Set();

const known = new WeakMap<Block, ReadonlySet<number>>();

/**
 * The nodes of a block whose position has stood before in their own line. Found in one walk through the
 * tree: looking back from each node would take as many steps as the line is long.
 */
export function comingBack(block: Block): ReadonlySet<number> {
  const found = known.get(block) ?? findComingBack(block);
  known.set(block, found);
  return found;
}

function findComingBack({ nodes }: Block): ReadonlySet<number> {
  // Most blocks have no position twice.
  const keys = nodes.flatMap(({ position }) => position?.key ?? []);
  if (new Set(keys).size === keys.length) return none;
  const back = new Set<number>();
  /** How often each position stands on the way to the node that is walked. */
  const onWay = new Map<string, number>();
  const open: { readonly node: number; left: boolean }[] = [{ node: 0, left: false }];
  for (let step = open.pop(); step; step = open.pop()) {
    const node = nodes[step.node];
    const key = node?.position?.key;
    if (!node) continue;
    const count = (key !== undefined && onWay.get(key)) || 0;
    if (step.left) {
      if (key !== undefined) onWay.set(key, count - 1);
      continue;
    }
    if (count > 0) back.add(step.node);
    if (key !== undefined) onWay.set(key, count + 1);
    open.push({ node: step.node, left: true });
    for (const child of node.children) open.push({ node: child, left: false });
  }
  return back;
}
