/**
 * Marked squares and the last move. Runs in the browser too: no Node imports.
 *
 * A mark is four brackets around the square; the last move is a fine rule around the square it
 * reached and a dotted one around the square it left. Neither covers the square or the piece.
 */
import type { Color, Square } from '../chess/index.ts';
import { short, side, squareCorner } from './geometry.ts';
import type { Shape } from './shape.ts';

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
  const to = rule(move.to, view);
  const from = rule(move.from, view);
  return [
    { part: 'last-move-ground', d: from + to },
    { part: 'last-move-to', d: to },
    { part: 'last-move-from', d: from },
  ];
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

function rule(square: Square, view: Color): string {
  const { x, y } = squareCorner(square, view);
  const inset = 0.45;
  const length = short(side - 2 * inset);
  return `M${short(x + inset)} ${short(y + inset)}h${length}v${length}h-${length}z`;
}
