/** What lies under the pieces and is the same on every board: squares, frame, coordinates. */
import type { Color } from '../chess/index.ts';
import { coordinateOutlines } from './coordinates.ts';
import { boardBox, short, side } from './geometry.ts';
import type { Shape } from './paint.ts';

/** A point in board units, from the top left corner of the board. */
interface Corner {
  readonly x: number;
  readonly y: number;
}

/** Top left corners of the 32 dark squares; the same from both sides of the board. */
export const darkCorners: readonly Corner[] = Array.from({ length: 32 }, (_, index) => {
  const row = Math.floor(index / 4);
  return { x: ((index % 4) * 2 + ((row + 1) % 2)) * side, y: row * side };
});

/** Dark squares with these top left corners, as one path: a page with many boards lays out less. */
export function darkShapes(corners: readonly Corner[]): readonly Shape[] {
  return [
    {
      part: 'board-tint',
      d: corners.map(({ x, y }) => `M${x} ${y}h${side}v${side}h-${side}z`).join(''),
    },
  ];
}

/** What a file is drawn on. In a page the margin is the page's own. */
export function sheetShape(outside: boolean): Shape {
  const { x, y, width, height } = boardBox(outside);
  return { part: 'board-sheet', d: `M${x} ${y}h${width}v${height}h-${width}z` };
}

/** The paper of the light squares, up to the frame. */
export function paperShape(): Shape {
  return { part: 'board-paper', d: 'M0 0h80v80h-80z' };
}

/** The frame, close around the squares. */
export function frameShapes(): readonly Shape[] {
  return [{ part: 'board-rule', d: 'M-.3-.3h80.6v80.6h-80.6z' }];
}

/** Units to the em of the coordinates, over the thousand of their outlines. */
const coordinateScale = 0.0034;

/** The sixteen signs outside the board, in the middle of their base lines: ranks to the left, files below. */
function coordinateSigns(
  view: Color,
): { readonly sign: string; readonly x: number; readonly y: number }[] {
  const order = (signs: string) => [...(view === 'white' ? signs : [...signs].reverse())];
  return [
    ...order('87654321').map((sign, row) => ({ sign, x: -3.3, y: row * side + side / 2 + 1.1 })),
    ...order('abcdefgh').map((sign, column) => ({ sign, x: column * side + side / 2, y: 84.3 })),
  ];
}

/** The signs in outlines, for files, which have no font. */
export function coordinatePaths(view: Color): string {
  return coordinateSigns(view)
    .map(
      ({ sign, x, y }) =>
        `<path transform="translate(${short(x)} ${short(y)})scale(${coordinateScale})" d="${coordinateOutline(sign)}"/>`,
    )
    .join('');
}

/**
 * The signs as text, for pages: two kilobytes less on each. Set in ten times the size and drawn in a tenth, since a
 * browser may have a smallest size of its own.
 */
export function coordinateText(view: Color): string {
  const signs = coordinateSigns(view).map(
    ({ sign, x, y }) => `<text x="${short(10 * x)}" y="${short(10 * y)}">${sign}</text>`,
  );
  return `<g class="board-coordinate" transform="scale(.1)">${signs.join('')}</g>`;
}

/** Path data of a sign; 1000 units to the em, 0 0 in the middle of its base line. */
function coordinateOutline(sign: string): string {
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
