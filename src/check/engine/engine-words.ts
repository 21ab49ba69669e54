import {
  fullMoveNumber,
  numberedSan,
  numberSign,
  otherColor,
  type Position,
  sideToMove,
} from '../../chess/index.ts';
import {
  type EngineFact,
  type EngineLine,
  inPawns,
  type Score,
  writeScore,
} from '../../facts/index.ts';

/** `Stockfish 15.1 at depth 18`. */
export function engineOf({ engine, depth }: EngineFact): string {
  return `${engine} at depth ${depth}`;
}

/** `-1.20`, `mate in 3`, `mated in 2`: for the side that the sentence speaks of. */
export function scoreText(score: Score): string {
  if (score.kind === 'pawns') return writeScore(score);
  return score.moves > 0 ? `mate in ${score.moves}` : `mated in ${-score.moves}`;
}

/** A move of a position with its number, such as `7...Be7`. */
export function nameOfMove(position: Position, san: string): string {
  const number = fullMoveNumber(position);
  return numberedSan({ san, number, color: sideToMove(position) });
}

/** What one move is worse than another, in pawns. */
export function lossOf(best: Score, other: Score): number {
  // Hundredths in binary fractions: 0.8 is more than 0.30 and 0.50 together.
  return Math.round((inPawns(best) - inPawns(other)) * 100) / 100;
}

/** `0.8 pawns`, `1 pawn`. */
export function pawnsText(pawns: number): string {
  return pawns === 1 ? '1 pawn' : `${pawns} pawns`;
}

/** The moves of a line with their numbers, as they are played from a position: `3...Kxf7 4.d4 Nf6`. */
export function lineText(position: Position, { moves }: EngineLine): string {
  let number = fullMoveNumber(position);
  let color = sideToMove(position);
  return moves
    .map((san, at) => {
      const sign = color === 'white' || at === 0 ? numberSign({ number, color }) : '';
      if (color === 'black') number += 1;
      color = otherColor(color);
      return sign + san;
    })
    .join(' ');
}
