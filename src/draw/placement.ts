import type { Color, Piece, PieceKind, Square } from '../chess/index.ts';

export interface PlacedPiece {
  readonly square: Square;
  readonly piece: Piece;
}

const kindOf: Readonly<Record<string, PieceKind>> = {
  k: 'king',
  q: 'queen',
  r: 'rook',
  b: 'bishop',
  n: 'knight',
  p: 'pawn',
};

/**
 * The pieces of a FEN or of its first field (PGN standard, 16.1.3.1), from a8 to h1. Any placement
 * is taken, also one that no game reaches: a structure may be shown without kings.
 * @throws RangeError if the field does not describe eight ranks of eight squares.
 */
export function readPlacement(fen: string): readonly PlacedPiece[] {
  const field = fen.trim().split(/\s+/, 1)[0] ?? '';
  const ranks = field.split('/');
  if (ranks.length !== 8) {
    throw new RangeError(`the placement "${field}" has ${ranks.length} ranks instead of 8`);
  }
  return ranks.flatMap((text, index) => readRank(text, 8 - index));
}

function readRank(text: string, rank: number): readonly PlacedPiece[] {
  const found: PlacedPiece[] = [];
  let file = 0;
  for (const sign of text) {
    if (/[1-8]/.test(sign)) {
      file += Number(sign);
      continue;
    }
    const kind = kindOf[sign.toLowerCase()];
    if (kind === undefined) {
      throw new RangeError(`"${sign}" on rank ${rank} of the placement is no piece`);
    }
    const color: Color = sign === sign.toLowerCase() ? 'black' : 'white';
    found.push({ square: `${'abcdefgh'.charAt(file)}${rank}`, piece: { color, kind } });
    file += 1;
  }
  if (file !== 8) {
    throw new RangeError(`rank ${rank} of the placement, "${text}", has ${file} squares, not 8`);
  }
  return found;
}
