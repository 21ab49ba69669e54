import { numberSign, sideToMove } from '../chess/index.ts';
import type { MoveNode } from '../model/index.ts';

/** A move as print names it, such as `7...Be7`; as written where it could not be played. */
export function moveName(node: MoveNode, parent: MoveNode | undefined): string {
  if (node.move) return numberSign(node.move) + node.move.san;
  const san = node.written?.san ?? '';
  if (!parent?.position) return san;
  const number = Number(parent.position.fen.split(' ')[5]);
  return numberSign({ number, color: sideToMove(parent.position) }) + san;
}
