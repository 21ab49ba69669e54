import { sideToMove } from '../chess/index.ts';
import type { MoveNode } from '../model/index.ts';

/** A move as print names it, such as `7...Be7`; as written where it could not be played. */
export function moveName(node: MoveNode, parent: MoveNode | undefined): string {
  if (node.move) return `${node.move.number}${dots(node.move.color)}${node.move.san}`;
  const san = node.written?.san ?? '';
  if (!parent?.position) return san;
  const number = parent.position.fen.split(' ')[5] ?? '';
  return `${number}${dots(sideToMove(parent.position))}${san}`;
}

function dots(color: 'white' | 'black'): string {
  return color === 'white' ? '.' : '...';
}
