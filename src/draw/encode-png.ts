import { crc32, deflateSync } from 'node:zlib';
import { choosePalette, type Palette, type PaletteOptions } from './palette.ts';
import type { Raster } from './raster.ts';

export interface EncodingOptions extends PaletteOptions {
  /** The colours, where they are known; else they are chosen from the pixels. */
  readonly palette?: Palette | undefined;
  /** How hard zlib presses the file, 1 to 9; 8 unless said, since 9 takes twice as long for a hundredth. */
  readonly level?: number | undefined;
}

/** The eight bytes that every PNG starts with (section 5.2). */
const signature = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);

/** Raised when the same pixels would be encoded to other bytes, so that caches are re-made. */
export const encoderVersion = 4;

/**
 * An indexed PNG (PNG specification, third edition), without alpha, of at most `limit` colours; unless said, of
 * as few as can stand for all. Boards are a few inks and their blends, so this
 * is a quarter of the size of full colour, and looks the same.
 */
export function encodePng(
  { width, height, pixels }: Raster,
  options: EncodingOptions = {},
): Uint8Array {
  const { colours, indexOf } = options.palette ?? choosePalette(pixels, options);
  const depth = [1, 2, 4].find((bits) => colours.length <= 2 ** bits) ?? 8;
  const rowBytes = Math.ceil((width * depth) / 8);
  const rows = packRows(pixels, { width, depth, rowBytes, indexOf });
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  // Bit depth, colour type 3 (indexed); compression, filter and interlace methods stay 0.
  header.set([depth, 3], 8);
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('PLTE', Buffer.from(colours.flat())),
    chunk('IDAT', deflateSync(rows, { level: options.level ?? 8, memLevel: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

interface Packing {
  readonly width: number;
  /** Bits a pixel. */
  readonly depth: number;
  readonly rowBytes: number;
  readonly indexOf: (pixel: number) => number;
}

/** Rows of palette indices, the first pixel in the high bits (section 7.2), a filter byte before each. */
function packRows(pixels: Int32Array, { width, depth, rowBytes, indexOf }: Packing): Uint8Array {
  const height = pixels.length / width;
  // Filter type 0 (none) leads each row: section 12.7 advises it for indexed colour.
  const rows = new Uint8Array((rowBytes + 1) * height);
  const perByte = 8 / depth;
  /** A byte of the index 1 only. */
  const evenByte = 255 / (2 ** depth - 1);
  let last = pixels[0] ?? 0;
  let index = indexOf(last);
  for (let y = 0; y < height; y += 1) {
    const end = (y + 1) * width;
    let at = y * (rowBytes + 1) + 1;
    let byte = 0;
    let free = 8;
    for (let i = y * width; i < end; i += 1) {
      const pixel = pixels[i] ?? 0;
      if (pixel !== last) {
        last = pixel;
        index = indexOf(pixel);
      }
      free -= depth;
      byte |= index << free;
      if (free > 0) continue;
      rows[at] = byte;
      at += 1;
      free = 8;
      byte = 0;
      // Most of a picture is even: whole bytes of the same pixel.
      if (pixels[i + perByte] !== pixel || i + perByte >= end) continue;
      const bytes = Math.floor((runEnd(pixels, i, end) - i - 1) / perByte);
      rows.fill(index * evenByte, at, at + bytes);
      at += bytes;
      i += bytes * perByte;
    }
    if (free < 8) rows[at] = byte;
  }
  return rows;
}

/** Where the pixels that are the same as that at `from` end. */
function runEnd(pixels: Int32Array, from: number, end: number): number {
  let next = from + 1;
  while (next < end && pixels[next] === pixels[from]) next += 1;
  return next;
}

function chunk(type: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(data.length, 0);
  framed.set(body, 4);
  framed.writeUInt32BE(crc32(body), body.length + 4);
  return framed;
}
