import {
  type Color,
  otherColor,
  type Position,
  rankOf,
  readBoard,
  squareAt,
} from '../../../chess/index.ts';
import { isAhead, pawnAttackers, pawnsOnFiles } from './pawns.ts';

/** A side's space: see the claim `space`. */
export function countSpace(position: Position, color: Color): number {
  const board = readBoard(position);
  let count = 0;
  for (const file of [3, 4, 5, 6]) {
    const pawns = pawnsOnFiles(board, color, [file]);
    for (const rank of [2, 3, 4]) {
      const square = squareAt(file, color === 'white' ? rank : 9 - rank) ?? '';
      if (pawns.includes(square)) continue;
      if (pawnAttackers(board, square, otherColor(color)).length > 0) continue;
      const behind = pawns.some(
        (pawn) => isAhead(pawn, square, color) && Math.abs(rankOf(pawn) - rankOf(square)) <= 3,
      );
      count += behind ? 2 : 1;
    }
  }
  return count;
}
