/** Why castling is not possible: FIDE Laws, 3.8. */
import { attackersOn } from '../attacks.ts';
import { kingOf, otherColor, readBoard, sideToMove } from '../board.ts';
import { nameOf, nameSquares, sideName } from '../names.ts';
import { between } from '../squares.ts';
import type { Position } from '../types.ts';

/** @param wing on which side castling was written; it is known to be illegal */
export function castlingReason(position: Position, wing: 'king' | 'queen'): string {
  const board = readBoard(position);
  const color = sideToMove(position);
  const rank = color === 'white' ? 1 : 8;
  const home = `e${rank}`;
  const corner = `${wing === 'king' ? 'h' : 'a'}${rank}`;
  const way = (wing === 'king' ? ['f', 'g'] : ['d', 'c']).map((file) => file + rank);

  const king = kingOf(board, color);
  if (king !== home) return `the king stands on ${king}, not on ${home}`;
  const rook = board.get(corner);
  if (rook?.kind !== 'rook' || rook.color !== color) return `no ${color} rook stands on ${corner}`;
  const letter = wing === 'king' ? 'K' : 'Q';
  const rights = position.fen.split(' ')[2] ?? '';
  if (!rights.includes(color === 'white' ? letter : letter.toLowerCase())) {
    return `${sideName(color)} has lost the right to castle ${wing}side: the king or the rook on ${corner} has moved before`;
  }
  const blocker = between(home, corner)?.find((square) => board.has(square));
  if (blocker !== undefined) {
    return `${nameOf(board, blocker)} stands between the king and the rook on ${corner}`;
  }
  const attackers = (square: string) => attackersOn(board, square, otherColor(color));
  const checkers = attackers(home);
  if (checkers.length > 0)
    return `the king on ${home} is in check from ${nameSquares(board, checkers)}`;
  const [passed = '', reached = ''] = way;
  const over = attackers(passed);
  if (over.length > 0) {
    return `the king would pass over ${passed}, which is attacked by ${nameSquares(board, over)}`;
  }
  return `on ${reached} the king would be in check from ${nameSquares(board, attackers(reached))}`;
}
