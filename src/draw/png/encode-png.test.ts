import fc from 'fast-check';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { encodePng } from './encode-png.ts';
import { rasterOf } from './raster.ts';

/** An image whose pixel `i` has the colour `pick(i)`. */
function image(width: number, height: number, pick: (index: number) => readonly number[]) {
  const rgba = new Uint8Array(width * height * 4);
  for (let i = 0; i < width * height; i += 1) rgba.set([...pick(i), 255], i * 4);
  return { ...rasterOf({ width, height, pixels: rgba }), rgba };
}

const colour = fc.tuple(
  fc.integer({ min: 0, max: 255 }),
  fc.integer({ min: 0, max: 255 }),
  fc.integer({ min: 0, max: 255 }),
);

test('up to 256 colours come back exactly, at every width and depth', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 37 }),
      fc.integer({ min: 1, max: 9 }),
      fc.array(colour, { minLength: 1, maxLength: 16 }),
      fc.array(fc.nat(), { minLength: 1, maxLength: 50 }),
      (width, height, colours, picks) => {
        const source = image(
          width,
          height,
          (i) => colours[(picks[i % picks.length] ?? 0) % colours.length] ?? [0, 0, 0],
        );
        const decoded = PNG.sync.read(Buffer.from(encodePng(source)));
        expect([decoded.width, decoded.height]).toEqual([width, height]);
        expect(Buffer.from(source.rgba).equals(decoded.data)).toBe(true);
      },
    ),
  );
});

test.each([
  [2, 1],
  [3, 2],
  [4, 2],
  [16, 4],
])('%i colours take %i bits a pixel', (count, bits) => {
  const png = encodePng(image(20, 20, (i) => [(i % count) * 10, 0, 0]));
  expect(png[24]).toBe(bits);
});

test('a smooth ramp keeps its ends and strays little', () => {
  const source = image(256, 4, (i) => [i % 256, i % 256, i % 256]);
  const { data } = PNG.sync.read(Buffer.from(encodePng(source)));
  let most = 0;
  for (let i = 0; i < data.length; i += 1) {
    most = Math.max(most, Math.abs((data[i] ?? 0) - (source.rgba[i] ?? 0)));
  }
  expect(most).toBeLessThanOrEqual(16);
});

test('a thin line of another hue keeps its hue among many greys', () => {
  const rust = [194, 64, 28];
  const source = image(100, 100, (i) => (i % 100 === 50 ? rust : [i % 251, i % 251, i % 251]));
  const { data } = PNG.sync.read(Buffer.from(encodePng(source)));
  const seen = [...data.subarray(50 * 4, 50 * 4 + 3)];
  expect(Math.hypot(...seen.map((value, i) => value - (rust[i] ?? 0)))).toBeLessThan(36);
});
