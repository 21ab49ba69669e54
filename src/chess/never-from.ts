import { otherColor, readBoard, squaresOf } from './board.ts';
import { sideName } from './names.ts';
import { fileOf, relativeRank } from './squares.ts';
import { type Color, colors, type Position, type Square } from './types.ts';

/**
 * Why no legal moves lead from one position to another, as far as men, pawns and castling rights show it:
 * one English clause that speaks of the second as `there`. Absent where they do not exclude it.
 */
export function whyNeverFrom(from: Position, to: Position): string | undefined {
  if (from.key === to.key) return undefined;
  const [here, there] = [readBoard(from), readBoard(to)];
  const taken = (color: Color) => squaresOf(here, color).length - squaresOf(there, color).length;
  for (const color of colors) {
    if (taken(color) < 0) return `${sideName(color)} has more men there`;
  }
  for (const color of colors) {
    const pawns = squaresOf(here, color, 'pawn');
    const later = squaresOf(there, color, 'pawn');
    if (later.length > pawns.length) return `${sideName(color)} has more pawns there`;
    const most = taken(otherColor(color));
    const stray = later.find((square) => pawns.every((pawn) => cost(pawn, square, color) > most));
    if (stray !== undefined) return `no ${color} pawn can come to ${stray}`;
    if (!canCome(pawns, later, color, most)) return `the ${color} pawns cannot come to stand so`;
  }
  const left = rights(from);
  const gained = [...rights(to)].some((right) => !left.includes(right));
  return gained ? 'a right to castle that is lost is there again' : undefined;
}

function rights({ fen }: Position): string {
  return fen.split(' ')[2]?.replace('-', '') ?? '';
}

/** How many captures a pawn needs to come to a square; infinite where it never does. */
function cost(pawn: Square, square: Square, color: Color): number {
  const ranks = relativeRank(square, color) - relativeRank(pawn, color);
  const files = Math.abs(fileOf(square) - fileOf(pawn));
  return files <= ranks ? files : Number.POSITIVE_INFINITY;
}

/** Whether each square can get a pawn of its own with so many captures in all. */
function canCome(
  pawns: readonly Square[],
  squares: readonly Square[],
  color: Color,
  captures: number,
): boolean {
  const [square, ...others] = squares;
  if (square === undefined) return true;
  return pawns.some((pawn) => {
    const needed = cost(pawn, square, color);
    const rest = pawns.filter((each) => each !== pawn);
    return needed <= captures && canCome(rest, others, color, captures - needed);
  });
}
