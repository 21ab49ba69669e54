import { fullMoveNumber, numberedSan, sideToMove } from '../../chess/index.ts';
import type { MoveNode } from '../../model/index.ts';

/** A move as print names it, such as `7...Be7`; as written where it could not be played. */
export function moveName(node: MoveNode, parent: MoveNode | undefined): string {
  if (node.move) return numberedSan(node.move);
  const san = node.written?.san ?? '';
  if (!parent?.position) return san;
  const number = fullMoveNumber(parent.position);
  return numberedSan({ san, number, color: sideToMove(parent.position) });
}
