import fc from 'fast-check';
import {
  initialPosition,
  isMoveFault,
  legalMoves,
  type Position,
  playMove,
} from '../../../chess/index.ts';

/** Positions that games of random moves reach, up to so many moves of both sides. */
export function randomPosition(longest: number): fc.Arbitrary<Position> {
  return fc.array(fc.nat(), { maxLength: longest, size: 'max' }).map((choices) => {
    let at = initialPosition;
    for (const choice of choices) {
      const moves = legalMoves(at);
      const san = moves[choice % moves.length];
      if (san === undefined) break;
      const played = playMove(at, san);
      if (isMoveFault(played)) throw new Error(played.reason);
      at = played.after;
    }
    return at;
  });
}
