import type { PieceKind } from './types.ts';

/** What pieces count, in pawns. Common practice, no source; a king cannot be counted. */
export const pieceValues: Readonly<Record<PieceKind, number>> = {
  king: 0,
  queen: 9,
  rook: 5,
  bishop: 3,
  knight: 3,
  pawn: 1,
};
