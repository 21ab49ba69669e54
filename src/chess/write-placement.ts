import type { Piece, Square } from './types.ts';

const letters = { king: 'k', queen: 'q', rook: 'r', bishop: 'b', knight: 'n', pawn: 'p' } as const;

/** The first field of a FEN (PGN standard, 16.1.3.1). */
export function writePlacement(pieces: ReadonlyMap<Square, Piece>): string {
  return [...'87654321']
    .map((rank) =>
      [...'abcdefgh']
        .map((file) => letterOf(pieces.get(file + rank)))
        .join('')
        .replace(/1+/g, (empty) => String(empty.length)),
    )
    .join('/');
}

function letterOf(piece: Piece | undefined): string {
  if (piece === undefined) return '1';
  const letter = letters[piece.kind];
  return piece.color === 'white' ? letter.toUpperCase() : letter;
}
