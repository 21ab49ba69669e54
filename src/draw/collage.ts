import { drawBoard } from './board.ts';
import { choosePalette, type Palette } from './palette.ts';
import { type PastedBoard, pasteBoard, pastedSize, specimens } from './paste-board.ts';
import { blankRaster, paste, type Raster, rasterOf } from './raster.ts';
import { readSvg } from './read-svg.ts';

/** A picture put together from a board and words on one ground. All lengths are image pixels. */
export interface Collage {
  readonly width: number;
  readonly height: number;
  /** Such as `#fdfbf6`. */
  readonly ground: string;
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
const drawnWords = new Map<string, Raster>();
const mostKept = 16;

/** Every card is drawn on the same sheet: a new one of three megabytes for each would pile up in a drawing process. */
let sheet: Raster | undefined;

/** The collage as an image, until the next one: only the words that do not recur are drawn anew. */
export function renderCollage({ width, height, ground, board, words }: Collage): Raster {
  const fits = sheet?.width === width && sheet.height === height;
  const image = blankRaster(width, height, ground, fits ? sheet?.pixels : undefined);
  sheet = image;
  for (const each of words) paste(renderWords(each, ground), image, each.x, each.y);
  pasteBoard(board, image);
  return image;
}

function renderWords({ svg, width, recur = false }: Words, ground: string): Raster {
  const key = `${ground} ${width} ${svg}`;
  const known = recur ? drawnWords.get(key) : undefined;
  if (known) return known;
  const drawn = rasterOf(readSvg(svg, width, ground).render());
  if (!recur) return drawn;
  if (drawnWords.size >= mostKept) drawnWords.clear();
  drawnWords.set(key, drawn);
  return drawn;
}

const palettes = new Map<string, Palette>();

/**
 * The colours of all collages on a ground, chosen once: a board with every piece has each blend of the
 * inks that words and pieces are drawn in.
 */
export function collagePalette({ ground }: Pick<Collage, 'ground'>): Palette {
  const known = palettes.get(ground);
  if (known) return known;
  const image = blankRaster(pastedSize, pastedSize, ground);
  pasteBoard({ placement: specimens, view: 'white', x: 0, y: 0 }, image);
  const palette = choosePalette(image.pixels);
  palettes.set(ground, palette);
  return palette;
}

/** The collage as an SVG document. */
export function drawCollage({ width, height, ground, board, words }: Collage): string {
  const place = (svg: string, { x, y }: { readonly x: number; readonly y: number }) =>
    svg.replace('<svg ', `<svg x="${x}" y="${y}" `);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">`,
    `<rect width="${width}" height="${height}" fill="${ground}"/>`,
    place(drawBoard({ ...board, size: pastedSize, theme: 'cloth' }), board),
    ...words.map((each) => place(each.svg, each)),
    '</svg>',
  ].join('');
}
