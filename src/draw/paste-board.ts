import { type Color, isDark, type Square } from '../chess/index.ts';
import { drawBoard } from './board.ts';
import { boardBox, side, squareCorner } from './geometry.ts';
import { pieceId } from './piece-paths.ts';
import { readPlacement } from './placement.ts';
import { cutOut, paste, type Raster, rasterOf } from './raster.ts';
import { readSvg } from './read-svg.ts';

/** A board with coordinates on an image, and where its top left corner is there. */
export interface PastedBoard {
  /** A FEN, or its first field. */
  readonly placement: string;
  /** The side at the bottom. */
  readonly view: Color;
  /** In image pixels, whole numbers. */
  readonly x: number;
  readonly y: number;
}

/** Image pixels to a board unit: a whole number, so that every square begins between two pixels. */
const unit = 6;
const box = boardBox(true);

/** Width and height of the board in image pixels. */
export const pastedSize = box.width * unit;

/** A placement with each piece on a light and on a dark square. */
export const specimens = 'kkqqrrbb/nnpp4/KKQQRRBB/NNPP4/8/8/8/8';
const empty = '8/8/8/8/8/8/8/8';

const emptyBoards = new Map<Color, Raster>();
let tiles: ReadonlyMap<string, Raster> | undefined;

/**
 * Puts a board onto an image, pixel for pixel as `drawBoard` shows it, out of squares that are drawn
 * once in a process: to draw its pieces anew took most of a card's time.
 * @throws RangeError for a placement that cannot be drawn.
 */
export function pasteBoard({ placement, view, x, y }: PastedBoard, image: Raster): void {
  const pieces = readPlacement(placement);
  const ground = emptyBoards.get(view) ?? render(empty, view);
  emptyBoards.set(view, ground);
  paste(ground, image, x, y);
  tiles ??= cutTiles();
  for (const { square, piece } of pieces) {
    const tile = tiles.get(tileName(pieceId(piece), square));
    const at = pixelOf(square, view);
    if (tile) paste(tile, image, x + at.x, y + at.y);
  }
}

function cutTiles(): ReadonlyMap<string, Raster> {
  const sheet = render(specimens, 'white');
  return new Map(
    readPlacement(specimens).map(({ square, piece }) => {
      const { x, y } = pixelOf(square, 'white');
      return [tileName(pieceId(piece), square), cutOut(sheet, x, y, side * unit)];
    }),
  );
}

function tileName(piece: string, square: Square): string {
  return `${piece} ${isDark(square) ? 'dark' : 'light'}`;
}

/** The top left corner of a square, from the board's. */
function pixelOf(square: Square, view: Color) {
  const { x, y } = squareCorner(square, view);
  return { x: (x - box.x) * unit, y: (y - box.y) * unit };
}

function render(placement: string, view: Color): Raster {
  return rasterOf(
    readSvg(drawBoard({ placement, view, size: pastedSize, theme: 'cloth' }), pastedSize).render(),
  );
}
