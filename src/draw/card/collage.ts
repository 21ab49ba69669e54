import type { Color } from '../../chess/index.ts';
import { drawBoard } from '../board.ts';
import { boardBox } from '../geometry.ts';
import type { Inks } from '../paint.ts';
import { type Indexed, indexRaster, paste } from '../png/indexed.ts';
import { choosePalette, type Palette } from '../png/palette.ts';
import { pixelOf, rasterOf } from '../png/raster.ts';
import { readSvg } from '../png/read-svg.ts';
import { specimens, tiledBoards } from '../png/tiled-board.ts';

/** A board with coordinates on an image, and where its top left corner is there. */
export interface PastedBoard {
  /** A FEN, or its first field. */
  readonly placement: string;
  readonly view: Color;
  /** In image pixels, whole numbers. */
  readonly x: number;
  readonly y: number;
}

/** Width and height of the board in image pixels, six to a board unit. */
export const pastedSize = boardBox(true).width * 6;

/** A picture put together from a board and words on one ground. All lengths are image pixels. */
export interface Collage {
  readonly width: number;
  readonly height: number;
  /** Of the board and of the words; its paper is the ground of all. */
  readonly inks: Inks;
  readonly board: PastedBoard;
  readonly words: readonly Words[];
}

/** Outlines on a transparent ground, and where their top left corner comes. */
export interface Words {
  readonly svg: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** Whether other pictures have the same words, so that they are kept when they have been drawn. */
  readonly recur?: boolean | undefined;
}

/** Words that recur, as they were drawn. */
const drawnWords = new Map<string, Indexed>();
const mostKept = 16;

/** Every card is drawn on the same sheet: a new one for each would pile up in a drawing process. */
let sheet: Indexed | undefined;

/** The collage as an image, until the next one: only the words that do not recur are drawn anew. */
export function renderCollage({ width, height, inks, board, words }: Collage): Indexed {
  const ground = inks.paper;
  const fits = sheet?.width === width && sheet.height === height;
  const { palette, drawTiled } = cardsOn(inks);
  const indices = fits && sheet ? sheet.indices : new Uint8Array(width * height);
  const image = { width, height, indices: indices.fill(palette.indexOf(pixelOf(ground))) };
  sheet = image;
  for (const each of words) paste(renderWords(each, ground, palette), image, each.x, each.y);
  paste(drawTiled(board), image, board.x, board.y);
  return image;
}

function renderWords({ svg, width, recur = false }: Words, ground: string, palette: Palette) {
  const key = `${ground} ${width} ${svg}`;
  const known = recur ? drawnWords.get(key) : undefined;
  if (known) return known;
  const drawn = indexRaster(rasterOf(readSvg(svg, width, ground).render()), palette);
  if (!recur) return drawn;
  if (drawnWords.size >= mostKept) drawnWords.clear();
  drawnWords.set(key, drawn);
  return drawn;
}

interface Shared {
  readonly palette: Palette;
  readonly drawTiled: (board: PastedBoard) => Indexed;
}

const shared = new Map<string, Shared>();

function cardsOn(inks: Inks): Shared {
  const key = JSON.stringify(inks);
  const known = shared.get(key);
  if (known) return known;
  const svg = drawBoard({ placement: specimens, theme: inks });
  const palette = choosePalette(rasterOf(readSvg(svg, pastedSize, inks.paper).render()).pixels);
  const drawTiled = tiledBoards({ theme: inks, width: pastedSize, palette });
  const made = { palette, drawTiled };
  shared.set(key, made);
  return made;
}

/**
 * The colours of all collages on a ground, chosen once: a board with every piece has each blend of the
 * inks that words and pieces are drawn in.
 */
export function collagePalette({ inks }: Pick<Collage, 'inks'>): Palette {
  return cardsOn(inks).palette;
}

export function drawCollage({ width, height, inks, board, words }: Collage): string {
  const place = (svg: string, { x, y }: { readonly x: number; readonly y: number }) =>
    svg.replace('<svg ', `<svg x="${x}" y="${y}" `);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">`,
    `<rect width="${width}" height="${height}" fill="${inks.paper}"/>`,
    place(drawBoard({ ...board, size: pastedSize, theme: inks }), board),
    ...words.map((each) => place(each.svg, each)),
    '</svg>',
  ].join('');
}
