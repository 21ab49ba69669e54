/** An image in memory, row by row, a number a pixel: alpha, blue, green, red from the highest byte. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly pixels: Int32Array;
}

/**
 * An image of one colour.
 * @param colour as in CSS, such as `#fdfbf6`.
 * @param pixels of an image of this size that is needed no more, to be written over.
 */
export function blankRaster(
  width: number,
  height: number,
  colour: string,
  pixels: Int32Array = new Int32Array(width * height),
): Raster {
  const [red, green, blue] = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
  const pixel = new Int32Array(Uint8Array.of(red ?? 0, green ?? 0, blue ?? 0, 255).buffer)[0] ?? 0;
  return { width, height, pixels: pixels.fill(pixel) };
}

/** Bytes of red, green, blue and alpha as one number a pixel; the memory stays the same. */
export function rasterOf({
  width,
  height,
  pixels,
}: Omit<Raster, 'pixels'> & { pixels: Uint8Array }) {
  const { buffer, byteOffset, length } = pixels;
  return { width, height, pixels: new Int32Array(buffer, byteOffset, length / 4) };
}

/** A square part of an image. */
export function cutOut({ width, pixels }: Raster, x: number, y: number, side: number): Raster {
  const part = new Int32Array(side * side);
  for (let row = 0; row < side; row += 1) {
    const from = (y + row) * width + x;
    part.set(pixels.subarray(from, from + side), row * side);
  }
  return { width: side, height: side, pixels: part };
}

/** Puts an image onto another one, within which it must lie. */
export function paste({ width, height, pixels }: Raster, onto: Raster, x: number, y: number): void {
  for (let row = 0; row < height; row += 1) {
    onto.pixels.set(pixels.subarray(row * width, (row + 1) * width), (y + row) * onto.width + x);
  }
}
