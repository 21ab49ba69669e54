import type { Color, PieceKind } from './types.ts';

/** The letters that a language has for the pieces in its moves; a pawn has none. */
export type PieceLetters = Readonly<Record<PieceKind, string>>;

/** The letters of SAN (PGN standard, 8.2.3.2). */
export const englishLetters: PieceLetters = {
  king: 'K',
  queen: 'Q',
  rook: 'R',
  bishop: 'B',
  knight: 'N',
  pawn: '',
};

export const kindOfSanLetter: Readonly<Record<string, PieceKind>> = {
  '': 'pawn',
  K: 'king',
  Q: 'queen',
  R: 'rook',
  B: 'bishop',
  N: 'knight',
};

/** Canonical SAN in the piece letters of a language. */
export function sanIn(letters: PieceLetters, san: string): string {
  return san.replace(/[KQRBN]/g, (letter) => letters[kindOfSanLetter[letter] ?? 'pawn']);
}

/** `7.` or `7...`: what print has before a move. */
export function numberSign({
  number,
  color,
}: {
  readonly number: number;
  readonly color: Color;
}): string {
  return `${number}${color === 'white' ? '.' : '...'}`;
}

interface NumberedMove {
  readonly san: string;
  readonly number: number;
  readonly color: Color;
}

/** A move with its number, as a book prints it: `7.dxc5`, `7...Nf6`. */
export function numberedSan(move: NumberedMove, letters?: PieceLetters): string {
  return numberSign(move) + (letters ? sanIn(letters, move.san) : move.san);
}

/** Moves one after another, as a book prints them: `1.d4 d5 2.c4`. */
export function nameMoves(moves: readonly NumberedMove[]): string {
  return moves
    .map((move, at) => (at === 0 || move.color === 'white' ? numberedSan(move) : move.san))
    .join(' ');
}
