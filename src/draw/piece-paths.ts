import type { Piece } from '../chess/index.ts';
import type { Shape } from './paint.ts';
import { pieceOutlines } from './pieces.ts';

/** Units of a piece's outline to one board unit. */
export const pieceScale = 0.01;

/** A piece's shapes in a square of 1000 by 1000, back to front. */
export function pieceShapes({ color, kind }: Piece): readonly Shape[] {
  const { body, lines } = pieceOutlines[color][kind];
  return [
    { part: `${color}-piece-body`, d: body },
    { part: `${color}-piece-lines`, d: lines },
  ];
}

const letters = {
  king: 'k',
  queen: 'q',
  rook: 'r',
  bishop: 'b',
  knight: 'n',
  pawn: 'p',
} as const;

/** The id of a piece's symbol: `piece-wk` is the white king, `piece-bp` a black pawn. */
export function pieceId({ color, kind }: Piece): string {
  return `piece-${color === 'white' ? 'w' : 'b'}${letters[kind]}`;
}
