import type { Palette } from './palette.ts';
import type { Raster } from './raster.ts';

/** An image in memory, row by row, a byte a pixel: the number of its colour in a palette. */
export interface Indexed {
  readonly width: number;
  readonly height: number;
  readonly indices: Uint8Array;
}

/** Stands for a pixel that shows what lies below; no palette has so many colours (`palette.ts`). */
export const seeThrough = 255;

export function indexRaster({ width, height, pixels }: Raster, { indexOf }: Palette): Indexed {
  const indices = new Uint8Array(pixels.length);
  let last = pixels[0] ?? 0;
  let index = indexOf(last);
  for (let i = 0; i < pixels.length; i += 1) {
    const pixel = pixels[i] ?? 0;
    // Most of a picture is even.
    if (pixel !== last) {
      last = pixel;
      index = indexOf(pixel);
    }
    indices[i] = index;
  }
  return { width, height, indices };
}

/** Puts an image onto another one, within which it must lie. */
export function paste(image: Indexed, onto: Indexed, x: number, y: number): void {
  const { width, height, indices } = image;
  for (let row = 0; row < height; row += 1) {
    const from = row * width;
    onto.indices.set(indices.subarray(from, from + width), (y + row) * onto.width + x);
  }
}

/** The same but for the pixels that are `seeThrough`. */
export function pasteOver(image: Indexed, onto: Indexed, x: number, y: number): void {
  const { width, height, indices } = image;
  for (let row = 0; row < height; row += 1) {
    const from = row * width;
    const to = (y + row) * onto.width + x;
    for (let column = 0; column < width; column += 1) {
      const index = indices[from + column] ?? seeThrough;
      if (index !== seeThrough) onto.indices[to + column] = index;
    }
  }
}
