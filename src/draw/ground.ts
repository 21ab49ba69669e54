/** What lies under the pieces and is the same on every board: squares, frame, coordinates. */
import type { Color } from '../chess/types.ts';
import { coordinateOutlines } from './coordinates.ts';
import { boardBox, short, side } from './geometry.ts';
import type { Shape } from './shape.ts';

/** Hatch lines across a square's side. */
const hatchLines = 8;

/** A dark square at 0 0: a quiet tint under a diagonal hatch. */
export function darkSquareShapes(): readonly Shape[] {
  const step = side / hatchLines;
  const lines = Array.from({ length: 2 * hatchLines - 1 }, (_, index) => {
    const sum = (index + 1) * step;
    const low = Math.max(0, sum - side);
    const high = Math.min(side, sum);
    return `M${short(low)} ${short(high)}L${short(high)} ${short(low)}`;
  });
  return [
    { part: 'board-tint', d: `M0 0h${side}v${side}h-${side}z` },
    { part: 'board-hatch', d: lines.join('') },
  ];
}

/** Top left corners of the 32 dark squares; the same from both sides of the board. */
export const darkCorners: readonly { readonly x: number; readonly y: number }[] = Array.from(
  { length: 32 },
  (_, index) => {
    const row = Math.floor(index / 4);
    return { x: ((index % 4) * 2 + ((row + 1) % 2)) * side, y: row * side };
  },
);

/** What a file is drawn on. In a page the margin is the page's own. */
export function sheetShape(outside: boolean): Shape {
  const { x, y, width, height } = boardBox(outside);
  return { part: 'board-sheet', d: `M${x} ${y}h${width}v${height}h-${width}z` };
}

/** The paper of the light squares, up to the frame. */
export function paperShape(): Shape {
  return { part: 'board-paper', d: 'M-1-1h82v82h-82z' };
}

/** The frame: a strong rule and a hairline within it. */
export function frameShapes(): readonly Shape[] {
  const box = (gap: number) => {
    const length = short(8 * side + 2 * gap);
    return `M-${gap}-${gap}h${length}v${length}h-${length}z`;
  };
  return [
    { part: 'board-hairline', d: box(0.1) },
    { part: 'board-rule', d: box(0.95) },
  ];
}

/** One sign of the coordinates, where it is set on its base line, and how much it is scaled. */
export interface CoordinateSign {
  readonly sign: string;
  readonly x: number;
  readonly y: number;
}

/** Units to the em of the coordinates, over the thousand of their outlines. */
export const coordinateScale = 0.0034;

/** The sixteen signs outside the board: ranks to the left, files below. */
export function coordinateSigns(view: Color): readonly CoordinateSign[] {
  const order = (signs: string) => [...(view === 'white' ? signs : [...signs].reverse())];
  return [
    ...order('87654321').map((sign, row) => ({ sign, x: -3.3, y: row * side + side / 2 + 1.1 })),
    ...order('abcdefgh').map((sign, column) => ({ sign, x: column * side + side / 2, y: 84.3 })),
  ];
}

/** Path data of a sign; 1000 units to the em, 0 0 in the middle of its base line. */
export function coordinateOutline(sign: string): string {
  const outline = coordinateOutlines[sign];
  if (outline === undefined) throw new RangeError(`"${sign}" is no coordinate of a board`);
  return outline;
}

/**
 * The sign of the side to move, in the corner where the coordinates meet: open for White, filled
 * for Black, pointing away from the side that moves.
 */
export function turnShape(turn: Color, view: Color): Shape {
  const d = turn === view ? 'M-4.8 84.6h3l-1.5-2.8z' : 'M-4.8 81.8h3l-1.5 2.8z';
  return { part: `board-turn-${turn}`, d };
}
