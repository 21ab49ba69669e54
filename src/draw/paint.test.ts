import { expect, test } from 'vitest';
import { type Ink, palettes, type Theme, themes } from './paint.ts';

type Triple = readonly [number, number, number];

/** Linear red, green and blue of an sRGB colour (IEC 61966-2-1). */
function linear(colour: string): Triple {
  const part = (at: number) => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [part(1), part(3), part(5)];
}

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(colour: string): number {
  const [red, green, blue] = linear(colour);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(theme: Theme, one: Ink, other: Ink): number {
  const [high = 0, low = 0] = [palettes[theme][one], palettes[theme][other]]
    .map(luminance)
    .sort((a, b) => b - a);
  return (high + 0.05) / (low + 0.05);
}

/** WCAG 2.2, success criterion 1.4.11: graphics 3 to 1; 1.4.3: text 4.5 to 1. */
test.each([...themes, 'cloth'] as const)('the inks of the theme %s stand out', (theme) => {
  for (const ink of ['plan', 'threat', 'guard', 'mark', 'last-move'] as const) {
    for (const ground of ['board-light-square', 'board-dark-square'] as const) {
      expect(contrast(theme, `board-${ink}`, ground), `${ink} on ${ground}`).toBeGreaterThanOrEqual(
        3,
      );
    }
  }
  for (const ink of ['ink', 'board-coordinate'] as const) {
    expect(contrast(theme, ink, 'paper'), ink).toBeGreaterThanOrEqual(4.5);
  }
  expect(contrast(theme, 'board-white-piece', 'board-black-piece')).toBeGreaterThanOrEqual(7);
});

/** No edge helps a black piece: its body must stand out by itself. */
test.each(themes)('black pieces of the theme %s stand out on both squares', (theme) => {
  for (const ground of ['board-light-square', 'board-dark-square'] as const) {
    expect(contrast(theme, 'board-black-piece', ground), ground).toBeGreaterThanOrEqual(4.5);
  }
});

/**
 * How colour-blind readers see linear colours: Machado, Oliveira and Fernandes, "A
 * Physiologically-based Model for Simulation of Color Vision Deficiency", 2009, severity 1.0.
 * The numbers are from memory.
 */
const sights: Readonly<Record<string, readonly [Triple, Triple, Triple]>> = {
  'all cones': [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  'no red cones': [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  'no green cones': [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  'no blue cones': [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** CIE L*a*b* (D65) of linear red, green and blue. */
function lab([red, green, blue]: Triple): Triple {
  const curve = (t: number) =>
    t > 216 / 24389 ? Math.cbrt(t) : (24389 / 27) * (t / 116) + 16 / 116;
  const x = curve((0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.9505);
  const y = curve(0.2126 * red + 0.7152 * green + 0.0722 * blue);
  const z = curve((0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

function seen(colour: string, rows: readonly [Triple, Triple, Triple]): Triple {
  const source = linear(colour);
  const part = (row: Triple) => {
    const sum = row[0] * source[0] + row[1] * source[1] + row[2] * source[2];
    return Math.min(1, Math.max(0, sum));
  };
  return lab([part(rows[0]), part(rows[1]), part(rows[2])]);
}

/** 30 is far above what is just told apart (about 2); common practice, no source. */
test.each(Object.entries(sights))('with %s the inks of the arrows differ', (_name, rows) => {
  for (const theme of ['light', 'dark'] as const) {
    const { 'board-plan': plan, 'board-threat': threat, 'board-guard': guard } = palettes[theme];
    for (const [one, other] of [
      [plan, threat],
      [plan, guard],
      [threat, guard],
    ] as const) {
      const [a, b] = [seen(one, rows), seen(other, rows)];
      const far = Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
      expect(far, `${one} and ${other}, ${theme}`).toBeGreaterThan(30);
    }
  }
});
