import { type Piece, pieceValues } from '../../../chess/index.ts';

/** Whether a piece is worth more than another, 1-3-3-5-9; a king more than everything. */
export function isWorthMore(piece: Piece, than: Piece): boolean {
  return worth(piece) > worth(than);
}

function worth({ kind }: Piece): number {
  return kind === 'king' ? Number.POSITIVE_INFINITY : pieceValues[kind];
}
