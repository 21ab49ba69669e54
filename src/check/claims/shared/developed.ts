import {
  type Color,
  fileOf,
  type Position,
  readBoard,
  relativeRank,
  type Square,
  squaresOf,
} from '../../../chess/index.ts';

/** The b-, c-, f- and g-file, where knights and bishops come from. */
const homeFiles = [2, 3, 6, 7];

/** Where a side's developed knights and bishops stand. */
export function developedPieces(position: Position, color: Color): Square[] {
  const board = readBoard(position);
  const minor = [...squaresOf(board, color, 'knight'), ...squaresOf(board, color, 'bishop')];
  return minor
    .filter((square) => relativeRank(square, color) > 1 || !homeFiles.includes(fileOf(square)))
    .sort();
}
