import { numberSign } from '../chess/index.ts';
import type { Fix } from '../diagnostics/index.ts';
import type { MoveNode } from '../model/index.ts';
import type { BlockText } from './node-text.ts';

/**
 * The number that the move behind a node needs once something stands between the two: a move by Black has none where
 * White's stands right before it (PGN standard, 8.2.2.2).
 */
export function numberAfter(block: BlockText, node: MoveNode): Fix[] {
  const next = node.children[0] === undefined ? undefined : block.nodes[node.children[0]];
  if (next?.written === undefined || next.written.number || next.move?.color !== 'black') return [];
  const { offset } = next.written.place.start;
  return [{ place: block.place(offset, offset), text: `${numberSign(next.move)}${block.gap}` }];
}
