/** The pieces of a position by square: the base of every fact of the board. */
import { fileOf, squareAt, squares } from './squares.ts';
import type { Color, Piece, PieceKind, Position, Square } from './types.ts';

/** Which piece stands on which square; an empty square is absent. */
export type Board = ReadonlyMap<Square, Piece>;

export const kindOfLetter: Readonly<Record<string, PieceKind>> = {
  k: 'king',
  q: 'queen',
  r: 'rook',
  b: 'bishop',
  n: 'knight',
  p: 'pawn',
};

/** One object for each of the twelve pieces, by its letter in a FEN. */
const pieceOfLetter: ReadonlyMap<string, Piece> = new Map(
  Object.entries(kindOfLetter).flatMap(([letter, kind]): [string, Piece][] => [
    [letter.toUpperCase(), { color: 'white', kind }],
    [letter, { color: 'black', kind }],
  ]),
);

const boards = new WeakMap<Position, Board>();

/** The board of a position, in the order of a FEN (a8 first). Read once for each position object. */
export function readBoard(position: Position): Board {
  let board = boards.get(position);
  if (board === undefined) {
    board = readPlacement(position.fen.slice(0, position.fen.indexOf(' ')));
    boards.set(position, board);
  }
  return board;
}

/** Reads a placement that is known to be well formed, the first field of a FEN. */
export function readPlacement(placement: string): Board {
  const board = new Map<Square, Piece>();
  let index = 0;
  for (const letter of placement) {
    if (letter === '/') continue;
    const piece = pieceOfLetter.get(letter);
    const square = squares[index];
    if (piece === undefined) index += Number(letter);
    else if (square !== undefined) {
      board.set(square, piece);
      index++;
    }
  }
  return board;
}

/** What stands on a square; absent if it is empty. */
export function pieceAt(position: Position, square: Square): Piece | undefined {
  return readBoard(position).get(square);
}

/** Whose move it is. */
export function sideToMove({ key }: Pick<Position, 'key'>): Color {
  return key[key.indexOf(' ') + 1] === 'b' ? 'black' : 'white';
}

/** The number of the move that comes next (PGN standard, 16.1.3.6). */
export function fullMoveNumber({ fen }: Pick<Position, 'fen'>): number {
  return Number(fen.slice(fen.lastIndexOf(' ') + 1));
}

export function otherColor(color: Color): Color {
  return color === 'white' ? 'black' : 'white';
}

/** Where pieces of a colour, of one kind or of all, stand. */
export function squaresOf(board: Board, color: Color, kind?: PieceKind): Square[] {
  const found: Square[] = [];
  for (const [square, piece] of board) {
    if (piece.color === color && (kind === undefined || piece.kind === kind)) found.push(square);
  }
  return found;
}

/** Where a king stands; absent only on a board that is no position. */
export function kingOf(board: Board, color: Color): Square | undefined {
  return squaresOf(board, color, 'king')[0];
}

/**
 * The board after a piece has gone from one square to another, whether or not it may: castling
 * takes its rook along, and a pawn that goes to an empty square of another file takes the pawn
 * beside it en passant.
 */
export function moved(board: Board, from: Square, to: Square): Board {
  const after = new Map(board);
  const piece = board.get(from);
  if (piece === undefined) return after;
  const right = fileOf(to) - fileOf(from);
  const rank = Number(from[1]);
  if (piece.kind === 'pawn' && right !== 0 && !board.has(to)) {
    const taken = squareAt(fileOf(to), rank);
    if (taken !== undefined) after.delete(taken);
  }
  if (piece.kind === 'king' && Math.abs(right) === 2) {
    const rookFrom = squareAt(right > 0 ? 8 : 1, rank);
    const rookTo = squareAt(right > 0 ? 6 : 4, rank);
    const rook = rookFrom === undefined ? undefined : board.get(rookFrom);
    if (rookFrom !== undefined && rookTo !== undefined && rook !== undefined) {
      after.delete(rookFrom);
      after.set(rookTo, rook);
    }
  }
  after.delete(from);
  after.set(to, piece);
  return after;
}
