import type { Position } from './types.ts';

const key = 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq -';

/** The initial position: FIDE Laws, 2.3; its FEN stands in the PGN standard, 16.1.4. */
export const initialPosition: Position = { fen: `${key} 0 1`, key };
