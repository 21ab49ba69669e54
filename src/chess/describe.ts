/** A position in words, for readers who do not see the board. */

import { inCheck } from './attacks.ts';
import { readBoard, sideToMove, squaresOf } from './board.ts';
import { isMate, isStalemate } from './rules.ts';
import { type Color, colors, type PieceKind, type Position, pieceKinds } from './types.ts';

type OfEachSide = Readonly<Record<Color, string>>;

/** The words of a language for a position; whose move it is, is a whole sentence for each side. */
export interface PositionWords {
  readonly sides: OfEachSide;
  readonly piece: Readonly<Record<PieceKind, string>>;
  readonly pieces: Readonly<Record<PieceKind, string>>;
  readonly toMove: OfEachSide;
  readonly inCheck: OfEachSide;
  readonly mated: OfEachSide;
  readonly stalemated: OfEachSide;
}

/**
 * The pieces of each side from king to pawns, squares in the order of the files, then whose move
 * it is: `White: king g1, queen d1, pawns a2 b2. Black: king g8. Black to move.`
 */
export function describePosition(position: Position, words: PositionWords): string {
  const board = readBoard(position);
  const sides = colors.map((color) => {
    const groups = pieceKinds.flatMap((kind) => {
      const at = squaresOf(board, color, kind).sort();
      if (at.length === 0) return [];
      return `${(at.length === 1 ? words.piece : words.pieces)[kind]} ${at.join(' ')}`;
    });
    return `${words.sides[color]}: ${groups.join(', ')}.`;
  });
  return `${sides.join(' ')} ${whoseMove(position, words)}`;
}

function whoseMove(position: Position, words: PositionWords): string {
  const side = sideToMove(position);
  if (isMate(position)) return words.mated[side];
  if (isStalemate(position)) return words.stalemated[side];
  return inCheck(position) ? words.inCheck[side] : words.toMove[side];
}
