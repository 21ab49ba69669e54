/**
 * Reads a move as authors spell it: SAN (PGN standard, 8.2.3), and what print, long algebraic
 * notation and engines write in its place. Nothing here knows the position.
 */
import { kindOfLetter } from './board.ts';
import type { LegalMove } from './rules.ts';
import type { PieceKind, Square } from './types.ts';

export type Spelling = PieceSpelling | CastlingSpelling;

export interface PieceSpelling {
  /** Absent where two squares stand alone, as in `e2e4`: whatever stands on the first. */
  readonly kind?: PieceKind;
  /** File and rank of the origin, as far as they are written. */
  readonly file?: string;
  readonly rank?: string;
  readonly capture: boolean;
  readonly to: Square;
  readonly promotion?: PieceKind;
}

export interface CastlingSpelling {
  readonly castling: 'king' | 'queen';
}

export function isCastling(spelling: Spelling): spelling is CastlingSpelling {
  return 'castling' in spelling;
}

const figurines: Readonly<Record<string, string>> = Object.fromEntries(
  [...'♔♕♖♗♘♙♚♛♜♝♞♟'].map((figurine, index) => [figurine, 'KQRBNP'[index % 6] ?? '']),
);

/**
 * The letters of a spelling in their plain form: figurines as letters, every dash as `-`, the
 * multiplication sign as `x`; without what only comments on the move (check, mate, suffixes, `e.p.`).
 */
export function plainSpelling(written: string): string {
  return written
    .trim()
    .replace(/[\u2654-\u265f]/g, (figurine) => figurines[figurine] ?? figurine)
    .replace(/[\ufe0e\ufe0f]/g, '')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[×:]/g, 'x')
    .replace(/[!?]+$/, '')
    .replace(/(\+\+|[+#])$/, '')
    .replace(/\s*e\.?p\.?$/i, '')
    .replace(/(\+\+|[+#])$/, '');
}

const shape =
  /^([KQRBNP]?)([a-h]?)([1-8]?)([x-]?)([a-h][1-8])(?:[=/]?([QRBNKPqrbnkp])|=?\(([QRBNKPqrbnkp])\))?$/;

/** Reads a spelling; absent if it is none. */
export function readSpelling(written: string): Spelling | undefined {
  const plain = plainSpelling(written);
  if (/^([Oo]-?[Oo]|0-?0)$/.test(plain)) return { castling: 'king' };
  if (/^([Oo]-?[Oo]-?[Oo]|0-?0-?0)$/.test(plain)) return { castling: 'queen' };
  const [whole, letter = '', file = '', rank = '', sign = '', to = '', bare, bracketed] =
    shape.exec(plain) ?? [];
  if (whole === undefined) return undefined;
  const named = bare ?? bracketed;
  const promotion = named === undefined ? undefined : kindOfLetter[named.toLowerCase()];
  const coordinates = letter === '' && file !== '' && rank !== '';
  // A dash joins two squares; `N-f3` is descriptive notation, not algebraic.
  if (sign === '-' && (file === '' || rank === '')) return undefined;
  // A pawn's origin is its file; a rank alone says nothing, `2e4`.
  if (letter === '' && file === '' && rank !== '') return undefined;
  const kind = coordinates ? undefined : kindOfLetter[(letter || 'P').toLowerCase()];
  return {
    ...(kind && { kind }),
    ...(file && { file }),
    ...(rank && { rank }),
    capture: sign === 'x',
    to,
    ...(promotion && { promotion }),
  };
}

/** Whether a legal move is one that the spelling may mean. */
export function fits(spelling: Spelling, move: LegalMove): boolean {
  const castling = castlingOf(move);
  if (isCastling(spelling)) return spelling.castling === castling;
  const { kind, file, rank } = spelling;
  const wholeOrigin = file !== undefined && rank !== undefined;
  // Castling is named by its own signs, or by the two squares of the king as engines write it.
  if (castling !== undefined && !wholeOrigin) return false;
  return (
    move.to === spelling.to &&
    (kind === undefined || move.kind === kind) &&
    (file === undefined || move.from[0] === file) &&
    (rank === undefined || move.from[1] === rank) &&
    // Between two whole squares an `x` says nothing new; otherwise it must be there.
    (spelling.capture === move.capture || (wholeOrigin && move.capture)) &&
    move.promotion === spelling.promotion
  );
}

function castlingOf({ san }: LegalMove): 'king' | 'queen' | undefined {
  if (san.startsWith('O-O-O')) return 'queen';
  return san.startsWith('O-O') ? 'king' : undefined;
}

/** Whether a move is the null move of some programs, which the PGN standard does not know. */
export function isNullMove(written: string): boolean {
  return /^(--|Z0|0000|@@@@|null|pass)$/i.test(plainSpelling(written));
}
