import { expect, test } from 'vitest';
import { type Ink, palettes, type Theme, themes } from './paint.ts';

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(theme: Theme, one: Ink, other: Ink): number {
  const [high = 0, low = 0] = [palettes[theme][one], palettes[theme][other]]
    .map(luminance)
    .sort((a, b) => b - a);
  return (high + 0.05) / (low + 0.05);
}

/** WCAG 2.2, success criterion 1.4.11: graphics 3 to 1; 1.4.3: text 4.5 to 1. */
test.each(themes)('the inks of the theme %s stand out', (theme) => {
  for (const ink of ['plan', 'threat', 'guard', 'mark', 'last-move'] as const) {
    for (const ground of ['paper', 'tint'] as const) {
      expect(contrast(theme, ink, ground), `${ink} on ${ground}`).toBeGreaterThanOrEqual(3);
    }
  }
  expect(contrast(theme, 'ink', 'sheet')).toBeGreaterThanOrEqual(4.5);
  expect(contrast(theme, 'white-piece', 'black-piece')).toBeGreaterThanOrEqual(7);
});

/** Black pieces on a dark board are seen by their edge. */
test.each(themes)('black pieces of the theme %s stand out by body or edge', (theme) => {
  for (const ground of ['paper', 'tint'] as const) {
    const best = Math.max(
      contrast(theme, 'black-piece', ground),
      contrast(theme, 'black-edge', ground),
    );
    expect(best, ground).toBeGreaterThanOrEqual(3);
  }
});
