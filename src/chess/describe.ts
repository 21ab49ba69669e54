/** A position in words, for readers who do not see the board. */

import { inCheck } from './attacks.ts';
import { readBoard, sideToMove, squaresOf } from './board.ts';
import { sideName } from './names.ts';
import { isMate, isStalemate } from './rules.ts';
import { colors, type Position, pieceKinds } from './types.ts';

const plurals = {
  king: 'kings',
  queen: 'queens',
  rook: 'rooks',
  bishop: 'bishops',
  knight: 'knights',
  pawn: 'pawns',
};

/**
 * The pieces of each side from king to pawns, squares in the order of the files, then whose move
 * it is: `White: king g1, queen d1, pawns a2 b2. Black: king g8. Black to move.`
 */
export function describePosition(position: Position): string {
  const board = readBoard(position);
  const sides = colors.map((color) => {
    const groups = pieceKinds.flatMap((kind) => {
      const at = squaresOf(board, color, kind).sort();
      if (at.length === 0) return [];
      return `${at.length === 1 ? kind : plurals[kind]} ${at.join(' ')}`;
    });
    return `${sideName(color)}: ${groups.join(', ')}.`;
  });
  return `${sides.join(' ')} ${sentence(position)}`;
}

function sentence(position: Position): string {
  const side = sideName(sideToMove(position));
  if (isMate(position)) return `${side} is mated.`;
  if (isStalemate(position)) return `${side} is stalemated.`;
  return `${side} to move${inCheck(position) ? ', in check' : ''}.`;
}
