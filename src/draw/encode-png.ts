import { crc32, deflateSync } from 'node:zlib';
import { choosePalette, type PaletteOptions } from './palette.ts';
import type { Raster } from './raster.ts';

export interface EncodingOptions extends PaletteOptions {
  /** How hard zlib presses the file, 1 to 9; 8 unless said, since 9 takes twice as long for a hundredth. */
  readonly level?: number | undefined;
}

/** The eight bytes that every PNG starts with (section 5.2). */
const signature = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);

/** Raised when the same pixels would be encoded to other bytes, so that caches are re-made. */
export const encoderVersion = 3;

/**
 * An indexed PNG (PNG specification, third edition), without alpha, of at most `limit` colours; unless said, of
 * as few as can stand for all. Boards are a few inks and their blends, so this
 * is a quarter of the size of full colour, and looks the same.
 */
export function encodePng(
  { width, height, pixels }: Raster,
  options: EncodingOptions = {},
): Uint8Array {
  const { colours, indexOf } = choosePalette(pixels, options);
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
  /** The bytes that hold one index only. */
  const full = depth === 8 ? 1 : 255 / (2 ** depth - 1);
  for (let y = 0; y < height; y += 1) {
    const end = (y + 1) * width;
    let at = y * (rowBytes + 1) + 1;
    let free = 8;
    for (let i = y * width; i < end; ) {
      const pixel = pixels[i];
      let next = i + 1;
      while (next < end && pixels[next] === pixel) next += 1;
      const index = indexOf(pixel ?? 0);
      for (; i < next; i += 1) {
        // A run from the start of a byte: most pixels of a picture are in long ones.
        if (free === 8 && next - i > 16) {
          const bytes = Math.floor(((next - i) * depth) / 8);
          rows.fill(index * full, at, at + bytes);
          at += bytes;
          i += (bytes * 8) / depth;
          if (i === next) break;
        }
        free -= depth;
        rows[at] = (rows[at] ?? 0) | (index << free);
        if (free > 0) continue;
        at += 1;
        free = 8;
      }
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
