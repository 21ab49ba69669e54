/**
 * Where things stand on a drawn board. Runs in the browser too: no Node imports.
 *
 * Board units: a square is 10 by 10, the squares reach from 0 0 (top left as seen) to 80 80, y
 * downwards. The frame and the coordinates lie outside, at negative x and beyond 80.
 */
import type { Color, Square } from '../chess/index.ts';

/** Board units to one side of a square. */
export const side = 10;

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A box in board units, as in an SVG `viewBox`. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What the frame takes outside the squares, and what the coordinates take (left and below). */
const frameMargin = 1.5;
const coordinateMargin = 6;

/** The whole picture of a board: 87.5 units square with coordinates, 83 without. */
export function boardBox(coordinates: boolean): Box {
  const left = coordinates ? coordinateMargin : frameMargin;
  const size = left + 8 * side + frameMargin;
  return { x: -left, y: -frameMargin, width: size, height: size };
}

/** `viewBox` of a box. */
export function viewBox({ x, y, width, height }: Box): string {
  return `${x} ${y} ${width} ${height}`;
}

/**
 * The top left corner of a square as it is seen from a side of the board.
 * @throws RangeError if it is no square.
 */
export function squareCorner(square: Square, view: Color): Point {
  const file = 'abcdefgh'.indexOf(square.charAt(0));
  const rank = '12345678'.indexOf(square.charAt(1));
  if (square.length !== 2 || file < 0 || rank < 0) {
    throw new RangeError(`"${square}" is no square: write a file and a rank, such as e4`);
  }
  return view === 'white'
    ? { x: file * side, y: (7 - rank) * side }
    : { x: (7 - file) * side, y: rank * side };
}

/** The middle of a square. @throws RangeError if it is no square. */
export function squareCentre(square: Square, view: Color): Point {
  const { x, y } = squareCorner(square, view);
  return { x: x + side / 2, y: y + side / 2 };
}

/** The square at a point in board units, or undefined outside the squares. */
export function squareAt({ x, y }: Point, view: Color): Square | undefined {
  const column = Math.floor(x / side);
  const row = Math.floor(y / side);
  if (column < 0 || column > 7 || row < 0 || row > 7) return undefined;
  return view === 'white'
    ? `${'abcdefgh'.charAt(column)}${8 - row}`
    : `${'hgfedcba'.charAt(column)}${row + 1}`;
}

/** A number as path data write it: at most two decimals. */
export function short(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}
