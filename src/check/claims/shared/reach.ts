/** What a piece attacks, and why it does not. A pinned piece attacks too: FIDE Laws, 3.1. */
import {
  attacksFrom,
  type Board,
  between,
  listed,
  nameOf,
  type Square,
  slides,
} from '../../../chess/index.ts';

export function reaches(board: Board, from: Square, to: Square): boolean {
  return attacksFrom(board, from).includes(to);
}

/** Why the piece on a square does not attack another square. */
export function whyNotReached(board: Board, from: Square, to: Square): string {
  const piece = board.get(from);
  if (!piece) return `${from} is empty`;
  if (from === to) return `${nameOf(board, from)} stands on ${to} itself`;
  const alone = attacksFrom(new Map([[from, piece]]), from);
  if (alone.includes(to)) {
    const blocker = between(from, to)?.find((square) => board.has(square)) ?? to;
    return `${nameOf(board, blocker)} stands between ${from} and ${to}`;
  }
  if (slides(piece))
    return `${nameOf(board, from)} does not stand on ${linesOf[piece.kind]} with ${to}`;
  return `${nameOf(board, from)} attacks only ${listed([...alone].sort())}`;
}

const linesOf: Readonly<Record<string, string>> = {
  bishop: 'a diagonal',
  rook: 'a rank or a file',
  queen: 'a rank, a file or a diagonal',
};
