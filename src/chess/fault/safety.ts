/** Moves that would leave the own king in check: FIDE Laws, 3.9. */
import { attackersOn } from '../attacks.ts';
import { type Board, kingOf, moved, otherColor } from '../board.ts';
import { nameOf, nameSquares } from '../names.ts';
import { between } from '../squares.ts';
import type { Square } from '../types.ts';

/** Why the king would be in check after a piece has gone there; absent if it would not. */
export function unsafeReason(board: Board, from: Square, to: Square): string | undefined {
  const piece = board.get(from);
  if (piece === undefined) return undefined;
  const other = otherColor(piece.color);
  const after = moved(board, from, to);
  const king = kingOf(after, piece.color);
  if (king === undefined) return undefined;
  const attackers = attackersOn(after, king, other);
  const [first] = attackers;
  if (first === undefined) return undefined;
  if (piece.kind === 'king') {
    return `on ${king} the king would be in check from ${nameSquares(after, attackers)}`;
  }
  const before = attackersOn(board, king, other);
  const staying = attackers.filter((square) => before.includes(square));
  if (staying.length > 0) {
    return `the king on ${king} would stay in check from ${nameSquares(board, staying)}`;
  }
  const alone = (way: Square[] = []) =>
    way.includes(from) && way.every((each) => each === from || !board.has(each));
  const pinned = attackers.find((square) => alone(between(square, king)));
  if (pinned !== undefined) {
    return `${nameOf(board, from)} is pinned to the king on ${king} by ${nameOf(board, pinned)}`;
  }
  return `taking en passant would open the king on ${king} to ${nameOf(board, first)}`;
}
