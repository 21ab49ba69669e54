/** An image in memory, row by row, a number a pixel: alpha, blue, green, red from the highest byte. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly pixels: Int32Array;
}

/** Bytes of red, green, blue and alpha as one number a pixel; the memory stays the same. */
export function rasterOf({
  width,
  height,
  pixels,
}: Omit<Raster, 'pixels'> & { pixels: Uint8Array }): Raster {
  const { buffer, byteOffset, length } = pixels;
  return { width, height, pixels: new Int32Array(buffer, byteOffset, length / 4) };
}

/** The pixel of a colour as in CSS, such as `#fdfbf6`. */
export function pixelOf(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
  return new Int32Array(Uint8Array.of(red ?? 0, green ?? 0, blue ?? 0, 255).buffer)[0] ?? 0;
}
