import { randomFrom } from '../../../../tests/chess/random.ts';
import {
  initialPosition,
  isMoveFault,
  legalMoves,
  type Position,
  playMove,
} from '../../../chess/index.ts';

/** The position after so many moves chosen at random from a seed; earlier where a game ends. */
export function randomPosition(seed: number, length: number): Position {
  const random = randomFrom(seed);
  let at = initialPosition;
  for (let count = 0; count < length; count++) {
    const moves = legalMoves(at);
    const san = moves[Math.floor(random() * moves.length)];
    if (san === undefined) break;
    const played = playMove(at, san);
    if (isMoveFault(played)) throw new Error(played.reason);
    at = played.after;
  }
  return at;
}
