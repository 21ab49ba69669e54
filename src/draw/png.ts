import { Resvg } from '@resvg/resvg-js';
import { encodePng } from './encode-png.ts';

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
}

/** Bounds of an image's width and height in image pixels. */
const smallest = 16;
const largest = 8192;

/**
 * An SVG as an indexed PNG, on white where it is transparent. The same SVG and size give the same
 * bytes with the same versions of resvg and zlib. No fonts are read, so text must be outlines.
 * @throws RangeError for a size out of bounds.
 * @throws Error for an SVG that cannot be read or that holds text.
 */
export function makePng(svg: string, size: PngSize): Uint8Array {
  const width = pngWidth(size);
  if (/<text[\s>]/.test(svg)) {
    throw new Error('the SVG holds <text>, which would be lost in a PNG: draw it as outlines');
  }
  const picture = readSvg(svg, width);
  const height = Math.round((width * picture.height) / picture.width);
  if (height < 1 || height > largest) {
    throw new RangeError(`an image cannot be ${height} pixels high: at most ${largest}`);
  }
  const image = picture.render();
  const pixels = { width: image.width, height: image.height, rgba: image.pixels };
  return encodePng(pixels, { limit: size.colours, isDense: (size.scale ?? 1) >= 2 });
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

function readSvg(svg: string, width: number): Resvg {
  try {
    return new Resvg(svg, {
      background: '#ffffff',
      fitTo: { mode: 'width', value: width },
      font: { loadSystemFonts: false },
    });
  } catch (cause) {
    const reason = cause instanceof Error ? cause.message : String(cause);
    throw new Error(`the SVG cannot be drawn: ${reason}`, { cause });
  }
}
