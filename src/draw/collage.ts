import { drawBoard } from './board.ts';
import { type PastedBoard, pasteBoard, pastedSize } from './paste-board.ts';
import { blankRaster, paste, type Raster, rasterOf } from './raster.ts';
import { readSvg } from './read-svg.ts';

/** A picture put together from a board and words on one ground. All lengths are image pixels. */
export interface Collage {
  readonly width: number;
  readonly height: number;
  /** Such as `#fdfbf6`. */
  readonly ground: string;
  readonly board: PastedBoard;
  readonly words?: PlacedWords | undefined;
}

/** Outlines on a transparent ground, `width` by `height`. */
export interface PlacedWords {
  readonly svg: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The collage as an image: only the words are drawn anew. */
export function renderCollage({ width, height, ground, board, words }: Collage): Raster {
  const image = blankRaster(width, height, ground);
  if (words) {
    const drawn = readSvg(words.svg, words.width, ground).render();
    paste(rasterOf(drawn), image, words.x, words.y);
  }
  pasteBoard(board, image);
  return image;
}

/** The collage as an SVG document. */
export function drawCollage({ width, height, ground, board, words }: Collage): string {
  const place = (svg: string, { x, y }: { readonly x: number; readonly y: number }) =>
    svg.replace('<svg ', `<svg x="${x}" y="${y}" `);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">`,
    `<rect width="${width}" height="${height}" fill="${ground}"/>`,
    place(drawBoard({ ...board, size: pastedSize }), board),
    words ? place(words.svg, words) : '',
    '</svg>',
  ].join('');
}
