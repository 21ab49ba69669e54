import type { PlayedMove } from '../chess/index.ts';

type Castlings = readonly PlayedMove[];

interface Tree {
  readonly nodes: readonly { readonly parent?: number; readonly move?: PlayedMove }[];
  readonly castled: Castlings;
}

/** By the nodes of a tree: for each node, the castlings that led to it. */
const known = new WeakMap<object, readonly Castlings[]>();

/**
 * The castlings on the way to a node, in earlier blocks too. Found once for all nodes of a block: otherwise a claim
 * at the end of a long line would walk all of it again.
 */
export function castledBefore({ nodes, castled }: Tree, node: number): Castlings {
  const all = known.get(nodes) ?? castlingsIn(nodes, castled);
  known.set(nodes, all);
  return all[node] ?? castled;
}

/** One pass is enough, since parents precede their children. */
function castlingsIn(nodes: Tree['nodes'], before: Castlings): readonly Castlings[] {
  const all: Castlings[] = [];
  for (const { parent, move } of nodes) {
    const earlier = parent === undefined ? before : (all[parent] ?? before);
    all.push(move?.san.startsWith('O-O') ? [...earlier, move] : earlier);
  }
  return all;
}
