import { initialPosition, type PlayedTree } from '../../chess/index.ts';
import type { Chapter, MoveNode } from '../types.ts';
import { treesOf } from './walk-chapter.ts';

/** Every tree of a chapter: of moves, games and exercises, and of what diagrams and patterns show. */
export function playedTreesIn({ blocks }: Chapter): PlayedTree[] {
  return blocks
    .flatMap(treesOf)
    .map(played)
    .filter(({ moves }) => moves.length > 0);
}

function played(nodes: readonly MoveNode[]): PlayedTree {
  const start = nodes[0]?.position?.fen ?? initialPosition.fen;
  const places = new Map<number, number>([[0, -1]]);
  const moves: PlayedTree['moves'][number][] = [];
  for (const { index, parent = 0, move } of nodes) {
    const at = places.get(parent);
    if (move === undefined || at === undefined) continue;
    places.set(index, moves.length);
    moves.push({ parent: at, san: move.san, fen: move.after.fen });
  }
  return { start, moves };
}
