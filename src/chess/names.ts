/** English for pieces and lists, as messages and descriptions need it. */
import type { Board } from './board.ts';
import type { Color, Square } from './types.ts';

export function sideName(color: Color): string {
  return color === 'white' ? 'White' : 'Black';
}

/** `the knight on c3`. */
export function nameOf(board: Board, square: Square): string {
  return `the ${board.get(square)?.kind ?? 'piece'} on ${square}`;
}

/** `the knight on c3 and the queen on d1`. */
export function nameSquares(board: Board, squares: readonly Square[]): string {
  return listed(squares.map((square) => nameOf(board, square)));
}

/** `a`, `a and b`, `a, b and c`. */
export function listed(words: readonly string[], joint = 'and'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${joint} ${words.at(-1)}`;
}
