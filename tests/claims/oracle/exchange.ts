/** Static exchange by legal captures, and mates that are forced, each by plain recursion. */
import type { Chess } from 'chessops/chess';
import type { NormalMove, Role } from 'chessops/types';
import { movesOf, played, takenBy, values } from './world.ts';

const cheapestFirst: readonly Role[] = ['pawn', 'knight', 'bishop', 'rook', 'queen', 'king'];

const worth = (role: Role | undefined) =>
  role === undefined || role === 'king' ? 0 : values[role];

/** What a move takes, and what a pawn becomes. */
export function takes(chess: Chess, move: NormalMove): number {
  const taken = takenBy(chess, move);
  const won = taken === undefined ? 0 : worth(chess.board.get(taken)?.role);
  return won + (move.promotion ? values[move.promotion] - 1 : 0);
}

/** What a move comes to when both sides go on taking on its square while it pays. */
export function exchange(chess: Chess, move: NormalMove): number {
  return takes(chess, move) - answer(played(chess, move), move.to);
}

function answer(chess: Chess, square: number): number {
  const captures = movesOf(chess).filter((move) => takenBy(chess, move) === square);
  for (const role of cheapestFirst) {
    const own = captures.filter(({ from }) => chess.board.get(from)?.role === role);
    if (own.length === 0) continue;
    return Math.max(0, ...own.map((move) => exchange(chess, move)));
  }
  return 0;
}

/** The best that the side to move gets by taking what stands on a square. */
export function bestTaking(chess: Chess, square: number): number | undefined {
  const results = movesOf(chess)
    .filter((move) => takenBy(chess, move) === square)
    .map((move) => exchange(chess, move));
  return results.length === 0 ? undefined : Math.max(...results);
}

/** The most that the side to move wins by one capture or promotion; at least 0. */
export function mostWon(chess: Chess): number {
  const results = movesOf(chess)
    .filter((move) => takenBy(chess, move) !== undefined || move.promotion)
    .map((move) => exchange(chess, move));
  return Math.max(0, ...results);
}

/** Whether the side to move can force mate with its move number `moves` or sooner. */
export function forcesMate(chess: Chess, moves: number): boolean {
  return movesOf(chess).some((move) => isMatedIn(played(chess, move), moves - 1));
}

/** Whether the side to move is mated, or is after so many more moves of the other, whatever it plays. */
export function isMatedIn(chess: Chess, moves: number): boolean {
  if (moves === 0) return chess.isCheck() && !chess.hasDests();
  const replies = movesOf(chess);
  if (replies.length === 0) return chess.isCheck();
  return replies.every((reply) => forcesMate(played(chess, reply), moves));
}
