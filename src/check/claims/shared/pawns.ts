import {
  type Board,
  type Color,
  fileOf,
  otherColor,
  relativeRank,
  type Square,
  squaresOf,
  step,
} from '../../../chess/index.ts';

/** Where a side's pawns stand on some files. */
export function pawnsOnFiles(board: Board, color: Color, files: readonly number[]): Square[] {
  return squaresOf(board, color, 'pawn').filter((square) => files.includes(fileOf(square)));
}

/** The files beside the one of a square, within the board. */
export function filesBeside(square: Square): number[] {
  return [fileOf(square) - 1, fileOf(square) + 1].filter((file) => file >= 1 && file <= 8);
}

/** Whether a square lies further on than another, as a side sees it. */
export function isAhead(square: Square, of: Square, color: Color): boolean {
  return relativeRank(square, color) > relativeRank(of, color);
}

/** The enemy pawns that could stop a pawn: ahead of it on its own file and those beside. */
export function pawnsAhead(board: Board, square: Square, color: Color): Square[] {
  const files = [fileOf(square), ...filesBeside(square)];
  return pawnsOnFiles(board, otherColor(color), files).filter((other) =>
    isAhead(other, square, color),
  );
}

/** The square that a pawn goes to with one step; absent off the board. */
export function stopSquare(square: Square, color: Color): Square | undefined {
  return step(square, 0, color === 'white' ? 1 : -1);
}

/** Where a side's pawns stand that attack a square. */
export function pawnAttackers(board: Board, square: Square, color: Color): Square[] {
  const back = color === 'white' ? -1 : 1;
  return [step(square, -1, back), step(square, 1, back)].flatMap((from) => {
    const piece = from === undefined ? undefined : board.get(from);
    return from !== undefined && piece?.kind === 'pawn' && piece.color === color ? [from] : [];
  });
}
