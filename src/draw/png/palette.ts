import { ColourTable } from './colour-table.ts';

/** The palette of an indexed image, chosen from its pixels; the same pixels give the same one. */
export type Rgb = readonly [number, number, number];

export interface Palette {
  readonly colours: readonly Rgb[];
  /** The colour for a pixel of a `Raster`. */
  readonly indexOf: (pixel: number) => number;
}

interface Counted {
  readonly rgb: Rgb;
  readonly count: number;
}

/**
 * When a palette stands for the pixels so that nothing is lost to the eye, and the sizes that are
 * tried before 256; chosen by looking at boards at 192 to 1120 pixels. `edges` bounds the root of
 * the mean square error of the pixels that are not exact, of 255; `shade` bounds the error of any
 * colour that is a `share` of all pixels, and `hue` what of it is no grey, so that a thin arrow keeps
 * its own hue; `area` bounds the error of one that is a hundredth, so that two grounds stay two.
 */
interface Fidelity {
  readonly sizes: readonly number[];
  readonly edges: number;
  readonly shade: number;
  readonly hue: number;
  readonly share: number;
  readonly area: number;
}

/** Sixteen colours fit four bits a pixel. */
const fine: Fidelity = {
  sizes: [16, 32, 64, 128],
  edges: 16,
  shade: 36,
  hue: 36,
  share: 1 / 2500,
  area: 36,
};

/** For pixels half as wide as those of CSS: an edge needs fewer steps from ink to paper. */
const dense: Fidelity = {
  ...fine,
  sizes: [5, 6, 8, 12, ...fine.sizes],
  edges: 28,
  shade: 60,
  hue: 16,
  area: 12,
};

export interface PaletteOptions {
  /** The most colours, whatever it costs; unless said, as few as stand for all pixels. */
  readonly limit?: number | undefined;
  /** Whether two pixels or more make one of CSS. */
  readonly isDense?: boolean | undefined;
}

export function choosePalette(
  pixels: Int32Array,
  { limit, isDense = false }: PaletteOptions = {},
): Palette {
  const found = histogram(pixels);
  const fidelity = isDense ? dense : fine;
  for (const size of limit === undefined ? fidelity.sizes : []) {
    const colours = reduce(found, size);
    if (isFaithful(found, colours, fidelity)) return paletteOf(colours);
  }
  return paletteOf(reduce(found, limit ?? 256));
}

/** The colours, the most frequent first. */
function histogram(pixels: Int32Array): readonly Counted[] {
  const counts = new ColourTable();
  let last = pixels[0] ?? 0;
  let start = 0;
  for (let i = 0; i < pixels.length; i += 1) {
    const pixel = pixels[i] ?? 0;
    if (pixel === last) continue;
    counts.add(last & 0xffffff, i - start);
    last = pixel;
    start = i;
  }
  counts.add(last & 0xffffff, pixels.length - start);
  return counts
    .entries()
    .map(([pixel, count]) => ({ rgb: split(pixel), count, pixel }))
    .sort((a, b) => b.count - a.count || a.pixel - b.pixel);
}

function split(pixel: number): Rgb {
  return [pixel & 255, (pixel >> 8) & 255, (pixel >> 16) & 255];
}

function distance(a: Rgb, b: Rgb): number {
  return (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2 + (a[2] - b[2]) ** 2;
}

function sum([red, green, blue]: Rgb): number {
  return red + green + blue;
}

/** By a counted loop, since this is where most of the time goes. */
function nearest([red, green, blue]: Rgb, colours: readonly Rgb[]): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let index = 0; index < colours.length; index += 1) {
    const colour = colours[index] as Rgb;
    const far = (colour[0] - red) ** 2 + (colour[1] - green) ** 2 + (colour[2] - blue) ** 2;
    if (far < least) {
      least = far;
      best = index;
    }
  }
  return best;
}

/**
 * At most `size` colours: boxes cut at the median (Heckbert, "Color image quantization for frame
 * buffer display", 1982), then settled by a few rounds of k-means. A colour that makes up most of
 * its box is kept exactly, so flat areas keep the ink that was asked for.
 */
function reduce(found: readonly Counted[], size: number): readonly Rgb[] {
  if (found.length <= size) return found.map(({ rgb }) => rgb);
  let boxes: readonly (readonly Counted[])[] = cutIntoBoxes(found, size);
  let colours = boxes.map(centre);
  for (let round = 0; round < 4; round += 1) {
    const next = colours.map((): Counted[] => []);
    for (const colour of found) next[nearest(colour.rgb, colours)]?.push(colour);
    boxes = next.filter((box) => box.length > 0);
    colours = boxes.map(centre);
  }
  return colours;
}

function cutIntoBoxes(found: readonly Counted[], size: number): Counted[][] {
  const boxes: Counted[][] = [[...found]];
  while (boxes.length < size) {
    const widest = boxes
      .map((box, index) => ({ index, ...spread(box) }))
      .reduce((a, b) => (b.cost > a.cost ? b : a));
    const box = boxes[widest.index];
    if (!box || widest.cost === 0) break;
    const { channel, mean } = widest;
    const low = box.filter(({ rgb }) => rgb[channel] <= mean);
    const high = box.filter(({ rgb }) => rgb[channel] > mean);
    boxes.splice(widest.index, 1, low, high);
  }
  return boxes;
}

/** The channel in which a box's colours differ most, its mean there, and by how much in all. */
function spread(box: readonly Counted[]): { channel: 0 | 1 | 2; mean: number; cost: number } {
  const mean = average(box, ({ count }) => Math.sqrt(count));
  const costs = ([0, 1, 2] as const).map((channel) => ({
    channel,
    mean: mean[channel],
    cost: box.reduce(
      // The root keeps the flat areas, which are most of the pixels, from taking every colour.
      (sum, { rgb, count }) => sum + Math.sqrt(count) * (rgb[channel] - mean[channel]) ** 2,
      0,
    ),
  }));
  return costs.reduce((a, b) => (b.cost > a.cost ? b : a));
}

function average(box: readonly Counted[], weightOf: (colour: Counted) => number): Rgb {
  let total = 0;
  const sums: [number, number, number] = [0, 0, 0];
  for (const colour of box) {
    const weight = weightOf(colour);
    total += weight;
    for (const channel of [0, 1, 2] as const) sums[channel] += colour.rgb[channel] * weight;
  }
  return [sums[0] / total, sums[1] / total, sums[2] / total];
}

function centre(box: readonly Counted[]): Rgb {
  const total = box.reduce((sum, { count }) => sum + count, 0);
  const main = box.reduce((a, b) => (b.count > a.count ? b : a));
  if (main.count * 2 > total) return main.rgb;
  const [red, green, blue] = average(box, ({ count }) => count);
  return [Math.round(red), Math.round(green), Math.round(blue)];
}

function isFaithful(
  found: readonly Counted[],
  colours: readonly Rgb[],
  { edges, shade, hue, share, area }: Fidelity,
): boolean {
  const pixels = found.reduce((sum, { count }) => sum + count, 0);
  let squares = 0;
  let inexact = 0;
  for (const { rgb, count } of found) {
    const colour = colours[nearest(rgb, colours)] ?? rgb;
    const far = distance(rgb, colour);
    const stray = far - (sum(rgb) - sum(colour)) ** 2 / 3;
    const isSeen = count > pixels * share;
    if (isSeen && (far > shade ** 2 || stray > hue ** 2)) return false;
    if (far > area ** 2 && count > pixels / 100) return false;
    if (far > 0) {
      squares += far * count;
      inexact += count;
    }
  }
  return squares <= inexact * edges ** 2;
}

function paletteOf(colours: readonly Rgb[]): Palette {
  // Indices are kept one higher, since the table has no 0.
  const known = new ColourTable();
  return {
    colours,
    indexOf: (pixel) => {
      const colour = pixel & 0xffffff;
      const index = known.get(colour) - 1;
      if (index >= 0) return index;
      const found = nearest(split(colour), colours);
      known.add(colour, found + 1);
      return found;
    },
  };
}
