import type { PlayedMove } from '../chess/index.ts';

type Castlings = readonly PlayedMove[];

interface Tree {
  readonly nodes: readonly { readonly parent?: number; readonly move?: PlayedMove }[];
  readonly castled: Castlings;
}

/** For the nodes of a tree, the castlings that led to each. */
const known = new WeakMap<object, readonly Castlings[]>();

/**
 * The castlings among the moves that led to a node, those before its block too. They are found once for
 * all nodes of a block: a claim at the end of a long line would else look back through all of it.
 */
export function castledBefore({ nodes, castled }: Tree, node: number): Castlings {
  const all = known.get(nodes) ?? castlingsIn(nodes, castled);
  known.set(nodes, all);
  return all[node] ?? castled;
}

/** Parents stand before their children. */
function castlingsIn(nodes: Tree['nodes'], before: Castlings): readonly Castlings[] {
  const all: Castlings[] = [];
  for (const { parent, move } of nodes) {
    const earlier = parent === undefined ? before : (all[parent] ?? before);
    all.push(move?.san.startsWith('O-O') ? [...earlier, move] : earlier);
  }
  return all;
}
