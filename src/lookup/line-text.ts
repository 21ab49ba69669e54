import type { PieceKind } from '../chess/types.ts';
import type { WayMove } from './ways.ts';

const kinds: Readonly<Record<string, PieceKind>> = {
  K: 'king',
  Q: 'queen',
  R: 'rook',
  B: 'bishop',
  N: 'knight',
};

export type PieceLetters = Readonly<Record<PieceKind, string>>;

/** Canonical SAN in the piece letters of a language. */
export function sanIn(letters: PieceLetters, san: string): string {
  return san.replace(/[KQRBN]/g, (letter) => letters[kinds[letter] ?? 'pawn']);
}

/** `9.b3` or `7...Be7`; without its number only where White's move stands before it. */
export function moveText(
  { number, color, move }: WayMove,
  letters: PieceLetters,
  bare = false,
): string {
  const dots = color === 'white' ? '.' : '...';
  return `${bare ? '' : number + dots}${sanIn(letters, move.san)}`;
}

/** Moves one after another: `3...c5 4.cxd5 exd5`. */
export function lineText(way: readonly WayMove[], letters: PieceLetters): string {
  return way
    .map((move, index) => moveText(move, letters, index > 0 && move.color === 'black'))
    .join(' ');
}
