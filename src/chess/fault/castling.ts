/** Why castling is not possible: FIDE Laws, 3.8. */
import { kingOf, readBoard, sideToMove } from '../board.ts';
import { castlingBar } from '../king-danger.ts';
import { nameOf, nameSquares, sideName } from '../names.ts';
import type { Position } from '../types.ts';

/** @param wing on which side castling was written; it is known to be illegal */
export function castlingReason(position: Position, wing: 'king' | 'queen'): string {
  const board = readBoard(position);
  const color = sideToMove(position);
  const rank = color === 'white' ? 1 : 8;
  const home = `e${rank}`;
  const corner = `${wing === 'king' ? 'h' : 'a'}${rank}`;
  const king = kingOf(board, color);
  if (king !== home) return `the king stands on ${king}, not on ${home}`;
  const rook = board.get(corner);
  if (rook?.kind !== 'rook' || rook.color !== color) return `no ${color} rook stands on ${corner}`;
  const bar = castlingBar(position, color, wing);
  switch (bar?.kind) {
    case 'blocked':
      return `${nameOf(board, bar.by)} stands between the king and the rook on ${corner}`;
    case 'castling-out-of-check':
      return `the king on ${home} is in check from ${nameSquares(board, bar.attackers)}`;
    case 'castling-through-check':
      return `the king would pass over ${bar.at}, which is attacked by ${nameSquares(board, bar.attackers)}`;
    case 'into-check':
      return `on ${bar.at} the king would be in check from ${nameSquares(board, bar.attackers)}`;
    default:
      return `${sideName(color)} has lost the right to castle ${wing}side: the king or the rook on ${corner} has moved before`;
  }
}
