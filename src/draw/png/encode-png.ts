import { crc32, deflateSync } from 'node:zlib';
import { type Indexed, indexRaster } from './indexed.ts';
import { choosePalette, type Palette, type PaletteOptions, type Rgb } from './palette.ts';
import type { Raster } from './raster.ts';

export interface EncodingOptions extends PaletteOptions {
  /** The colours, where they are known; else they are chosen from the pixels. */
  readonly palette?: Palette | undefined;
  /** See `encodeIndexed`. */
  readonly level?: number | undefined;
}

/** The eight bytes that every PNG starts with (section 5.2). */
const signature = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);

/** Raised when the same pixels would be encoded to other bytes, so that caches are re-made. */
export const encoderVersion = 6;

/**
 * An indexed PNG (PNG specification, third edition), without alpha, of at most `limit` colours; unless said, of
 * as few as can stand for all. Boards are a few inks and their blends, so this
 * is a quarter of the size of full colour, and looks the same.
 */
export function encodePng(image: Raster, options: EncodingOptions = {}): Uint8Array {
  const palette = options.palette ?? choosePalette(image.pixels, options);
  return encodeIndexed(indexRaster(image, palette), palette.colours, options.level);
}

/** @param level how hard zlib presses the file, 1 to 9; 8 unless said, since 9 takes twice as long for a hundredth. */
export function encodeIndexed(
  { width, height, indices }: Indexed,
  colours: readonly Rgb[],
  level = 8,
): Uint8Array {
  const depth = [1, 2, 4].find((bits) => colours.length <= 2 ** bits) ?? 8;
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  // Bit depth, colour type 3 (indexed); compression, filter and interlace methods stay 0.
  header.set([depth, 3], 8);
  const rows = packRows(indices, width, depth);
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('PLTE', Buffer.from(colours.flat())),
    chunk('IDAT', deflateSync(rows, { level, memLevel: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/**
 * Rows of palette indices, the first pixel in the high bits (section 7.2), a filter byte before each.
 * @param depth bits a pixel.
 */
function packRows(indices: Uint8Array, width: number, depth: number): Uint8Array {
  const height = indices.length / width;
  const rowBytes = Math.ceil((width * depth) / 8);
  // Filter type 0 (none) leads each row: section 12.7 advises it for indexed colour.
  const rows = new Uint8Array((rowBytes + 1) * height);
  const whole = depth === 4 ? Math.floor(width / 2) : 0;
  for (let y = 0; y < height; y += 1) {
    let from = y * width;
    let at = y * (rowBytes + 1) + 1;
    const end = from + width;
    // Nearly every board: two pixels a byte.
    for (const last = at + whole; at < last; at += 1) {
      rows[at] = ((indices[from] ?? 0) << 4) | (indices[from + 1] ?? 0);
      from += 2;
    }
    for (let free = 8; from < end; from += 1) {
      free -= depth;
      rows[at] = (rows[at] ?? 0) | ((indices[from] ?? 0) << free);
      if (free > 0) continue;
      free = 8;
      at += 1;
    }
  }
  return rows;
}

function chunk(type: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(data.length, 0);
  framed.set(body, 4);
  framed.writeUInt32BE(crc32(body), body.length + 4);
  return framed;
}
