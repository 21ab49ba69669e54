import { type Color, type Position, passMove, sideToMove } from '../../../chess/index.ts';

/** The position with a side to move: itself, or as if the other side had passed. */
export function turnOf(position: Position, color: Color): Position {
  return sideToMove(position) === color ? position : passMove(position);
}
