import type { Board } from '../board.ts';
import { kingDanger } from '../king-danger.ts';
import { nameOf, nameSquares } from '../names.ts';
import type { Square } from '../types.ts';

/** Why the king would be in check after a piece has gone there; absent if it would not. */
export function unsafeReason(board: Board, from: Square, to: Square): string | undefined {
  const danger = kingDanger(board, from, to);
  if (danger === undefined) return undefined;
  const { kind, king, attackers } = danger;
  const [first = king] = attackers;
  switch (kind) {
    case 'into-check':
      return `on ${king} the king would be in check from ${nameSquares(board, attackers)}`;
    case 'stays-in-check':
      return `the king on ${king} would stay in check from ${nameSquares(board, attackers)}`;
    case 'pinned':
      return `${nameOf(board, from)} is pinned to the king on ${king} by ${nameOf(board, first)}`;
    case 'opens-king':
      return `taking en passant would open the king on ${king} to ${nameOf(board, first)}`;
  }
}
