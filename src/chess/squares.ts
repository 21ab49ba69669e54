/** Names of squares and steps between them. Files count 1 to 8 from the a-file, ranks from White's side. */
import type { Color, Square } from './types.ts';

const files = 'abcdefgh';

/** All squares: a8 to h8, then a7 and so on to h1, the order of a FEN. */
export const squares: readonly Square[] = [8, 7, 6, 5, 4, 3, 2, 1].flatMap((rank) =>
  [...files].map((file) => file + rank),
);

const known: ReadonlySet<string> = new Set(squares);

/** Whether a text is the name of a square, `a1` to `h8`, in small letters. */
export function isSquare(text: string): boolean {
  return known.has(text);
}

/** The file of a square, 1 (a) to 8 (h). */
export function fileOf(square: Square): number {
  return square.charCodeAt(0) - 96;
}

/** The rank of a square, 1 to 8. */
export function rankOf(square: Square): number {
  return square.charCodeAt(1) - 48;
}

/** The square at a file and a rank, both 1 to 8; absent off the board. */
export function squareAt(file: number, rank: number): Square | undefined {
  if (file < 1 || file > 8 || rank < 1 || rank > 8) return undefined;
  return squares[(8 - rank) * 8 + file - 1];
}

/** The square so many files to the right and ranks up, as White sees it; absent off the board. */
export function step(square: Square, right: number, up: number): Square | undefined {
  return squareAt(fileOf(square) + right, rankOf(square) + up);
}

/** Whether a square is dark, as a1 is. */
export function isDark(square: Square): boolean {
  return (fileOf(square) + rankOf(square)) % 2 === 0;
}

/** A rank counted from the colour's own side: White's second rank is 2, Black's seventh is 2. */
export function relativeRank(square: Square, color: Color): number {
  return color === 'white' ? rankOf(square) : 9 - rankOf(square);
}

/**
 * The squares strictly between two on one rank, file or diagonal, from the first to the second;
 * absent where they share none.
 */
export function between(from: Square, to: Square): Square[] | undefined {
  const right = fileOf(to) - fileOf(from);
  const up = rankOf(to) - rankOf(from);
  if (from === to || !(right === 0 || up === 0 || Math.abs(right) === Math.abs(up))) {
    return undefined;
  }
  const found: Square[] = [];
  for (let count = 1; count < Math.max(Math.abs(right), Math.abs(up)); count++) {
    const square = step(from, Math.sign(right) * count, Math.sign(up) * count);
    if (square !== undefined) found.push(square);
  }
  return found;
}
