import { isDark, type Piece, type Square, writePlacement } from '../../chess/index.ts';
import { type BoardFile, drawBoard } from '../board.ts';
import { boardBox, side, squareCorner } from '../geometry.ts';
import type { LastMove } from '../marks.ts';
import type { Inks, Theme } from '../paint.ts';
import type { BoardPicture } from '../picture.ts';
import { readPlacement } from '../placement.ts';
import { type Indexed, indexRaster, pasteOver, seeThrough } from './indexed.ts';
import type { Palette } from './palette.ts';
import { rasterOf } from './raster.ts';
import { readSvg } from './read-svg.ts';

/** A board that is put together; an arrow goes over several squares, so one with arrows is not. */
export type TiledPicture = Omit<BoardPicture, 'arrows'> & {
  /** A course's own; those of the theme for picture files unless said. */
  readonly inks?: Inks | undefined;
};

export interface TiledBoardsOptions {
  readonly theme: Theme | Inks;
  /** In image pixels; see `narrowest`. */
  readonly width: number;
  readonly palette: Palette;
}

/** In image pixels: below it, the edge of a square is drawn by the pieces of two. */
export const narrowest = 320;

/** A placement with each piece on a light and on a dark square. */
export const specimens = 'kkqqrrbb/nnpp4/KKQQRRBB/NNPP4/8/8/8/8';
const empty = '8/8/8/8/8/8/8/8';

interface SquareState {
  readonly piece?: Piece | undefined;
  readonly isMarked?: boolean;
  /** The last move began or ended there. */
  readonly isFrom?: boolean;
  readonly isTo?: boolean;
}

/** A square with what it shows, where that differs from the empty board, and its place on the image. */
interface Tile {
  readonly image: Indexed;
  readonly x: number;
  readonly y: number;
}

/**
 * Puts boards together out of squares that are drawn once in a process: to draw all pieces anew took nearly all the
 * time of a picture. Each square is drawn where it stands, so its edges have the pixels that they have on the whole
 * board.
 * @returns what draws a board. @throws RangeError for a placement or square that cannot be drawn.
 */
export function tiledBoards(options: TiledBoardsOptions): (picture: TiledPicture) => Indexed {
  const { width, theme, palette } = options;
  const grounds = new Map<string, Indexed>();
  const tiles = new Map<string, Indexed>();

  const render = (board: BoardFile, pixels: number): Indexed => {
    const svg = drawBoard({ ...board, theme, size: pixels });
    return indexRaster(rasterOf(readSvg(svg, pixels).render()), palette);
  };
  const groundOf = ({ view, coordinates, turn }: TiledPicture): Indexed => {
    const key = JSON.stringify([view, coordinates, turn]);
    const ground = grounds.get(key) ?? render({ placement: empty, view, coordinates, turn }, width);
    grounds.set(key, ground);
    return ground;
  };
  const tileOf = (square: Square, state: SquareState, picture: TiledPicture): Tile => {
    const { view = 'white', coordinates = true, turn } = picture;
    const box = boardBox(coordinates || turn !== undefined);
    const scale = width / box.width;
    const cornerOf = (of: Square) => {
      const { x, y } = squareCorner(of, view);
      return { x: (x - box.x) * scale, y: (y - box.y) * scale };
    };
    const isWhole = Math.abs(side * scale - Math.round(side * scale)) < 1e-6;
    // Where squares are whole pixels wide, one stands for all of its colour: always the same one, whichever is asked
    // for first, since rounding differs from square to square.
    const drawnOn = isWhole ? (isDark(square) ? 'd4' : 'e4') : square;
    const key = JSON.stringify([view, box.x, drawnOn, state]);
    const at = cornerOf(square);
    const [x, y] = [Math.floor(at.x + 1e-6), Math.floor(at.y + 1e-6)];
    const known = tiles.get(key);
    if (known) return { image: known, x, y };
    const from = cornerOf(drawnOn);
    const [left, top] = [Math.floor(from.x + 1e-6), Math.floor(from.y + 1e-6)];
    // No pixel that is wholly another square's: a hundredth is for what a float lacks.
    const pixels = Math.ceil(Math.max(from.x - left, from.y - top) + side * scale - 0.01);
    const part = { x: left / scale + box.x, y: top / scale + box.y, width: pixels / scale };
    const drawn = render(
      {
        placement: writePlacement(new Map(state.piece && [[drawnOn, state.piece]])),
        view,
        coordinates: false,
        marks: state.isMarked ? [drawnOn] : [],
        lastMove: lastMoveAt(drawnOn, state),
        part: { ...part, height: part.width },
      },
      pixels,
    );
    const image = difference(drawn, groundOf(picture), left, top);
    tiles.set(key, image);
    return { image, x, y };
  };

  return (picture) => {
    const ground = groundOf(picture);
    const board = { ...ground, indices: ground.indices.slice() };
    for (const [square, state] of statesOf(picture)) {
      const { image, x, y } = tileOf(square, state, picture);
      pasteOver(image, board, x, y);
    }
    return board;
  };
}

function statesOf(picture: TiledPicture): ReadonlyMap<Square, SquareState> {
  const { placement, marks = [], lastMove } = picture;
  const states = new Map<Square, SquareState>();
  const add = (square: Square, state: SquareState) =>
    states.set(square, { ...states.get(square), ...state });
  for (const { square, piece } of readPlacement(placement)) add(square, { piece });
  for (const square of marks) add(square, { isMarked: true });
  if (lastMove) {
    add(lastMove.from, { isFrom: true });
    add(lastMove.to, { isTo: true });
  }
  return states;
}

/** A last move that has so much of it on a square, and the rest far from it. */
function lastMoveAt(square: Square, { isFrom, isTo }: SquareState): LastMove | undefined {
  if (!isFrom && !isTo) return undefined;
  const far = `${across('abcdefgh', square.charAt(0))}${across('12345678', square.charAt(1))}`;
  return { from: isFrom ? square : far, to: isTo ? square : far };
}

function across(order: string, sign: string): string {
  return order.charAt((order.indexOf(sign) + 4) % 8);
}

function difference(image: Indexed, ground: Indexed, x: number, y: number): Indexed {
  const { width } = image;
  const indices = image.indices.map((index, at) => {
    const below = ground.indices[(y + Math.floor(at / width)) * ground.width + x + (at % width)];
    return index === below ? seeThrough : index;
  });
  return { ...image, indices };
}
