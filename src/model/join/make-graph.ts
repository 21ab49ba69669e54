import type { BlockOutline } from '../queries/outline.ts';
import type { GraphMove, GraphPosition, NodeRef } from '../types.ts';

/** Joins the positions of all `moves` blocks: two move orders that meet are one node. */
export function makeGraph(
  chapters: readonly { readonly file: string; readonly blocks: readonly BlockOutline[] }[],
): Record<string, GraphPosition> {
  type BuildingMove = Omit<GraphMove, 'at'> & { at: NodeRef[] };
  type Building = Omit<GraphPosition, 'at' | 'moves'> & { at: NodeRef[]; moves: BuildingMove[] };
  // No prototype: the keys come from the author's text.
  const graph: Record<string, Building> = Object.create(null);
  for (const { file, blocks } of chapters) {
    for (const block of blocks) {
      const keys: string[] = [];
      for (const { index, parent = -1, key, san } of block.nodes) {
        keys[index] = key;
        const ref = { chapter: file, block: block.key, node: index };
        const there = graph[key];
        // Most have one place and one move: a list that grows by `push` takes room for seventeen.
        if (there) there.at.push(ref);
        else graph[key] = { key, at: [ref], moves: [] };
        const before = keys[parent];
        if (before === undefined || san === undefined) continue;
        const from = graph[before];
        const known = from?.moves.find((move) => move.san === san);
        if (known) known.at.push(ref);
        else if (from) from.moves = [...from.moves, { san, to: key, at: [ref] }];
      }
    }
  }
  return graph;
}
