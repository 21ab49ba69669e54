/**
 * Marked squares and the last move. Runs in the browser too: no Node imports.
 *
 * A mark is four brackets around the square; the last move is a frame around the square it reached
 * and a ring on the square it left, which is empty. Neither covers the square or the piece.
 */
import type { Color, Square } from '../chess/index.ts';
import { short, side, squareCentre, squareCorner } from './geometry.ts';
import type { Shape } from './paint.ts';

/** The shapes of marks in board units. @throws RangeError if one is no square. */
export function markShapes(marks: readonly Square[], view: Color): readonly Shape[] {
  if (marks.length === 0) return [];
  const d = [...new Set(marks)].map((square) => brackets(square, view)).join('');
  return [
    { part: 'mark-ground', d },
    { part: 'mark', d },
  ];
}

export interface LastMove {
  readonly from: Square;
  readonly to: Square;
}

/** The shapes that show the last move, in board units. @throws RangeError for what is no square. */
export function lastMoveShapes(move: LastMove | undefined, view: Color): readonly Shape[] {
  if (!move) return [];
  return [{ part: 'last-move', d: ring(move.from, view) + frame(move.to, view) }];
}

function brackets(square: Square, view: Color): string {
  const { x, y } = squareCorner(square, view);
  const inset = 0.8;
  const arm = 2.2;
  const [left, right, top, bottom] = [x + inset, x + side - inset, y + inset, y + side - inset];
  const bracket = (cornerX: number, cornerY: number, toX: number, toY: number) =>
    `M${short(cornerX)} ${short(cornerY + toY)}v${short(-toY)}h${short(toX)}`;
  return (
    bracket(left, top, arm, arm) +
    bracket(right, top, -arm, arm) +
    bracket(left, bottom, arm, -arm) +
    bracket(right, bottom, -arm, -arm)
  );
}

function frame(square: Square, view: Color): string {
  const { x, y } = squareCorner(square, view);
  const inset = 0.375;
  const length = short(side - 2 * inset);
  return `M${short(x + inset)} ${short(y + inset)}h${length}v${length}h-${length}z`;
}

function ring(square: Square, view: Color): string {
  const { x, y } = squareCentre(square, view);
  const radius = 1.3;
  const arc = (to: number) => `a${radius} ${radius} 0 1 0 ${short(to)} 0`;
  return `M${short(x - radius)} ${y}${arc(2 * radius)}${arc(-2 * radius)}z`;
}
