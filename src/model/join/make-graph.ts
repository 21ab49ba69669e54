import type { Chapter, GraphMove, GraphPosition, NodeRef } from '../types.ts';

/** Joins the positions of all `moves` blocks: two move orders that meet are one node. */
export function makeGraph(chapters: readonly Chapter[]): Record<string, GraphPosition> {
  type BuildingMove = Omit<GraphMove, 'at'> & { at: NodeRef[] };
  type Building = Omit<GraphPosition, 'at' | 'moves'> & { at: NodeRef[]; moves: BuildingMove[] };
  // No prototype: the keys come from the author's text.
  const graph: Record<string, Building> = Object.create(null);
  for (const chapter of chapters) {
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves') continue;
      for (const node of block.nodes) {
        if (!node.position) continue;
        const ref = { chapter: chapter.file, block: block.key, node: node.index };
        const { key, fen } = node.position;
        const there = graph[key];
        // Most have one place and one move: a list that grows by `push` takes room for seventeen.
        if (there) there.at.push(ref);
        else graph[key] = { key, fen, at: [ref], moves: [] };
        const before = node.parent === undefined ? undefined : block.nodes[node.parent]?.position;
        if (!before || !node.move) continue;
        const { san } = node.move;
        const from = graph[before.key];
        const known = from?.moves.find((move) => move.san === san);
        if (known) known.at.push(ref);
        else if (from) from.moves = [...from.moves, { san, to: key, at: [ref] }];
      }
    }
  }
  return graph;
}
