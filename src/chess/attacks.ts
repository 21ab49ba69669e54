/** Which squares pieces attack. A piece attacks a square even when it is pinned: FIDE Laws, 3.1. */
import { type Board, kingOf, otherColor, readBoard, sideToMove } from './board.ts';
import { squares, step } from './squares.ts';
import type { Color, Piece, Position, Square } from './types.ts';

type Step = readonly [right: number, up: number];

const straight: readonly Step[] = [
  [0, 1],
  [1, 0],
  [0, -1],
  [-1, 0],
];
const diagonal: readonly Step[] = [
  [1, 1],
  [1, -1],
  [-1, -1],
  [-1, 1],
];
const jumps: readonly Step[] = [
  [1, 2],
  [2, 1],
  [2, -1],
  [1, -2],
  [-1, -2],
  [-2, -1],
  [-2, 1],
  [-1, 2],
];
const around: readonly Step[] = [...straight, ...diagonal];

/** The single steps of a piece: the directions of one that slides, the targets of one that does not. */
function stepsOf(piece: Piece): readonly Step[] {
  switch (piece.kind) {
    case 'king':
    case 'queen':
      return around;
    case 'rook':
      return straight;
    case 'bishop':
      return diagonal;
    case 'knight':
      return jumps;
    case 'pawn':
      return piece.color === 'white'
        ? [
            [-1, 1],
            [1, 1],
          ]
        : [
            [-1, -1],
            [1, -1],
          ];
  }
}

/** Whether a piece moves along a whole line. */
export function slides(piece: Piece): boolean {
  return piece.kind === 'queen' || piece.kind === 'rook' || piece.kind === 'bishop';
}

/** The squares that the piece on a square attacks: along a line up to and with the first piece met. */
export function attacksFrom(board: Board, from: Square): Square[] {
  const piece = board.get(from);
  return piece === undefined ? [] : attacksOf(board, piece, from);
}

/** The squares that a piece would attack from a square of this board. */
export function attacksOf(board: Board, piece: Piece, from: Square): Square[] {
  const found: Square[] = [];
  const far = slides(piece);
  for (const [right, up] of stepsOf(piece)) {
    let square = step(from, right, up);
    while (square !== undefined) {
      found.push(square);
      square = far && !board.has(square) ? step(square, right, up) : undefined;
    }
  }
  return found;
}

/** Where the pieces of a colour stand that attack a square of a board. */
export function attackersOn(board: Board, square: Square, color: Color): Square[] {
  const found: Square[] = [];
  // Seen from the square, an attacker is where the same piece of the other colour would attack.
  for (const kind of ['pawn', 'knight', 'bishop', 'rook', 'queen', 'king'] as const) {
    for (const from of attacksOf(board, { color: otherColor(color), kind }, square)) {
      const piece = board.get(from);
      if (piece?.color === color && piece.kind === kind) found.push(from);
    }
  }
  return found;
}

/** Of those, the bishops, rooks and queens. */
export function slidersOn(board: Board, square: Square, color: Color): Square[] {
  return attackersOn(board, square, color).filter((from) => {
    const piece = board.get(from);
    return piece !== undefined && slides(piece);
  });
}

/** Where the pieces of a colour stand that attack a square, in the order a8 to h1. */
export function attackersOf(position: Position, square: Square, color: Color): Square[] {
  const found = new Set(attackersOn(readBoard(position), square, color));
  return squares.filter((each) => found.has(each));
}

/** Whether the side to move is in check. */
export function inCheck(position: Position): boolean {
  const board = readBoard(position);
  const color = sideToMove(position);
  const king = kingOf(board, color);
  return king !== undefined && attackersOn(board, king, otherColor(color)).length > 0;
}
