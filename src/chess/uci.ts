import type { PieceKind, PlayedMove } from './types.ts';

/** What a pawn becomes, by its letter in UCI notation. */
export const kindOfUciLetter: Readonly<Record<string, PieceKind>> = {
  q: 'queen',
  r: 'rook',
  b: 'bishop',
  n: 'knight',
};

const letters: Readonly<Partial<Record<PieceKind, string>>> = {
  queen: 'q',
  rook: 'r',
  bishop: 'b',
  knight: 'n',
};

/** A move in UCI notation: `e1g1`, `e7e8q`. */
export function inUci({
  from,
  to,
  promotion,
}: Pick<PlayedMove, 'from' | 'to'> & {
  readonly promotion?: PieceKind | undefined;
}): string {
  return from + to + (promotion === undefined ? '' : (letters[promotion] ?? ''));
}
