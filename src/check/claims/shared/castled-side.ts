/** What `castled` and `shield` share: where a king that has castled stands. */
import {
  type Color,
  fileOf,
  kingOf,
  type Position,
  readBoard,
  relativeRank,
  sideName,
  squareAt,
} from '../../../chess/index.ts';
import { castlingRights, type Wing, wingName } from './castling.ts';

/** The wing of a castled king and its square, or why the king is not castled. */
export function castledSide(
  position: Position,
  color: Color,
): { readonly wing: Wing; readonly king: string } | { readonly not: string } {
  const board = readBoard(position);
  const king = kingOf(board, color);
  if (king === undefined) return { not: 'there is no king' };
  const file = fileOf(king);
  if (relativeRank(king, color) !== 1 || file === 4 || file === 5 || file === 6) {
    return { not: `the king of ${sideName(color)} stands on ${king}` };
  }
  if (castlingRights(position, color).length > 0) {
    return { not: `${sideName(color)} still has the right to castle` };
  }
  const wing = file > 6 ? 'king' : 'queen';
  const corner = wing === 'king' ? 8 : 1;
  for (let at = file; at !== corner; ) {
    at += Math.sign(corner - file);
    const square = squareAt(at, color === 'white' ? 1 : 8) ?? '';
    const piece = board.get(square);
    if (piece?.kind === 'rook' && piece.color === color) {
      return { not: `the rook on ${square} is shut in on the ${wingName(wing)}` };
    }
  }
  return { wing, king };
}
