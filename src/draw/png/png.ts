import { type Collage, collagePalette, renderCollage } from '../card/collage.ts';
import { boardPalette } from './board-palette.ts';
import { encodeIndexed, encodePng } from './encode-png.ts';
import type { Indexed } from './indexed.ts';
import { type Raster, rasterOf } from './raster.ts';
import { readSvg } from './read-svg.ts';
import { type TiledPicture, tiledBoards } from './tiled-board.ts';

/** An SVG, or what a picture is put together of. */
export type Picture = string | Collage | TiledPicture;

export interface PngSize {
  /** Width in CSS pixels; the height follows from the SVG. */
  readonly width: number;
  /** Image pixels to a CSS pixel; 1 unless said. */
  readonly scale?: number | undefined;
  /**
   * The most colours it may have, 2 to 256. Unless said, as few as lose nothing that can be seen;
   * from scale 2 on, where pixels are half as wide, that is fewer.
   */
  readonly colours?: number | undefined;
  /** How hard zlib presses it, 1 to 9; 8 unless said. */
  readonly level?: number | undefined;
}

/** An image of a finished SVG, or of one that is drawn only where the cache has no image of it. */
export type PngJob = PngSize & ({ readonly svg: string } | LatePicture);

export interface LatePicture {
  /** Everything that the picture depends on: another picture has another key. */
  readonly key: string;
  readonly draw: () => Promise<Picture>;
}

/** Bounds of an image's width and height in image pixels. */
const smallest = 16;
const largest = 8192;

/**
 * A picture as an indexed PNG; an SVG is drawn on white where it is transparent. The same picture and
 * size give the same bytes with the same versions of resvg and zlib. No fonts are read, so text must
 * be outlines.
 * @throws RangeError for a size out of bounds, or one that is not a collage's own.
 * @throws Error for an SVG that cannot be read or that holds text.
 */
export function makePng(picture: Picture, size: PngSize): Uint8Array {
  const { colours: limit, scale = 1, level } = size;
  const width = pngWidth(size);
  const isDense = scale >= 2;
  if (typeof picture === 'string')
    return encodePng(render(picture, width), { limit, isDense, level });
  const isCollage = 'words' in picture;
  const image = isCollage ? renderCollage(picture) : drawTiled(picture, width, isDense);
  if (image.width !== width) throw new RangeError(`this picture is ${image.width} pixels wide`);
  const palette = isCollage ? collagePalette(picture) : boardPalette(width, isDense, picture.inks);
  return encodeIndexed(image, palette.colours, level);
}

const tiled = new Map<string, ReturnType<typeof tiledBoards>>();

function drawTiled(picture: TiledPicture, width: number, isDense: boolean): Indexed {
  const { inks } = picture;
  const size = JSON.stringify([width, isDense, inks]);
  const palette = boardPalette(width, isDense, inks);
  const draw = tiled.get(size) ?? tiledBoards({ theme: inks ?? 'two-tone', width, palette });
  tiled.set(size, draw);
  return draw(picture);
}

function render(svg: string, width: number): Raster {
  if (/<text[\s>]/.test(svg)) {
    throw new Error('the SVG holds <text>, which would be lost in a PNG: draw it as outlines');
  }
  const picture = readSvg(svg, width);
  const height = Math.round((width * picture.height) / picture.width);
  if (height < 1 || height > largest) {
    throw new RangeError(`an image cannot be ${height} pixels high: at most ${largest}`);
  }
  return rasterOf(picture.render());
}

/** Width in image pixels. @throws RangeError for what is out of bounds. */
export function pngWidth({ width, scale = 1, colours = 16 }: PngSize): number {
  if (!(Number.isInteger(colours) && colours >= 2 && colours <= 256)) {
    throw new RangeError(`an image cannot have ${colours} colours: give a number from 2 to 256`);
  }
  const pixels = Math.round(width * scale);
  if (!(width > 0 && scale > 0 && pixels >= smallest && pixels <= largest)) {
    throw new RangeError(
      `an image cannot be ${width} pixels wide at scale ${scale}: width times scale must lie from ${smallest} to ${largest}`,
    );
  }
  return pixels;
}
