import { initialPosition, isMoveFault, type Position, playMove } from '../../chess/index.ts';
import { positionAddress } from '../position-address.ts';

/** The address of the position after moves from the start, `e4 e5 Nf3`. */
export function addressAfter(moves: string): string {
  let position: Position = initialPosition;
  for (const san of moves.split(' ').filter((word) => word !== '')) {
    const played = playMove(position, san);
    if (isMoveFault(played)) throw new Error(`${san}: ${played.reason}`);
    position = played.after;
  }
  return positionAddress(position.key);
}
