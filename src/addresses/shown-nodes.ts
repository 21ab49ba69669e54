import type { Block, MoveNode } from '../model/index.ts';
import { gameMoves } from './game-moves.ts';

/** The nodes of a block that its page shows as moves, the start of the block among them. */
export function shownNodes(block: Block): readonly MoveNode[] {
  if (block.kind === 'moves') return block.nodes;
  if (block.kind !== 'game') return [];
  const shown = new Set(gameMoves(block).source);
  return block.nodes.filter(({ index }) => shown.has(index));
}
