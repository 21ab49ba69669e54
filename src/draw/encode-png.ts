import { crc32, deflateSync } from 'node:zlib';
import { choosePalette, type PaletteOptions } from './palette.ts';

/** The eight bytes that every PNG starts with (section 5.2). */
const signature = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);

/** Pixels of a picture, row by row: red, green, blue, alpha, a byte each. Alpha is not used. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
}

/** Raised when the same pixels would be encoded to other bytes, so that caches are re-made. */
export const encoderVersion = 2;

/**
 * An indexed PNG (PNG specification, third edition) of at most `limit` colours; unless said, of
 * as few as can stand for all. Boards are a few inks and their blends, so this
 * is a quarter of the size of full colour, and looks the same.
 */
export function encodePng(
  { width, height, rgba }: Pixels,
  options: PaletteOptions = {},
): Uint8Array {
  const { colours, indexOf } = choosePalette(rgba, options);
  const depth = [1, 2, 4].find((bits) => colours.length <= 2 ** bits) ?? 8;
  const perByte = 8 / depth;
  const rowBytes = Math.ceil((width * depth) / 8);
  // Filter type 0 (none) leads each row: section 12.7 advises it for indexed colour.
  const rows = new Uint8Array((rowBytes + 1) * height);
  const pixels = new Uint32Array(rgba.buffer, rgba.byteOffset, width * height);
  let last = -1;
  let index = 0;
  for (let y = 0, i = 0; y < height; y += 1) {
    const row = y * (rowBytes + 1) + 1;
    for (let x = 0; x < width; x += 1, i += 1) {
      const pixel = pixels[i] ?? 0;
      if (pixel !== last) {
        last = pixel;
        index = indexOf(pixel);
      }
      const at = row + Math.floor(x / perByte);
      rows[at] = (rows[at] ?? 0) | (index << (8 - depth * (1 + (x % perByte))));
    }
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  // Bit depth, colour type 3 (indexed); compression, filter and interlace methods stay 0.
  header.set([depth, 3], 8);
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('PLTE', Buffer.from(colours.flat())),
    chunk('IDAT', deflateSync(rows, { level: 9, memLevel: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(data.length, 0);
  framed.set(body, 4);
  framed.writeUInt32BE(crc32(body), body.length + 4);
  return framed;
}
