import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

export interface CardFont {
  readonly name: string;
  readonly data: Buffer;
  readonly weight: 400 | 600;
  readonly style: 'normal' | 'italic';
}

/** The parts that Source Serif 4 is divided into: Latin, Cyrillic, Greek and Vietnamese. */
const subsets = ['latin', 'latin-ext', 'cyrillic', 'cyrillic-ext', 'greek', 'vietnamese'] as const;

const styles = [
  { weight: 400, style: 'normal' },
  { weight: 600, style: 'normal' },
  { weight: 400, style: 'italic' },
] as const;

type Subset = (typeof subsets)[number];

/** The signs of which the part for Latin surely has each: what is printed of ASCII and of its Latin supplement. */
const plain = /^[\x20-\x7e\xa1-\xac\xae-\xff–—‘’‚“”„‹›…]*$/;

const loaded = new Map<boolean, CardFont[]>();

/**
 * Source Serif 4 from its package, with all that a text needs; each part has a family name of its own. Read once: for a
 * text that needs Latin alone three files instead of eighteen, which are most of what the first card of a process takes.
 */
export function cardFonts(text: string): CardFont[] {
  const isPlain = plain.test(text);
  const fonts = loaded.get(isPlain) ?? readFonts(isPlain ? ['latin'] : subsets);
  loaded.set(isPlain, fonts);
  return fonts;
}

function readFonts(parts: readonly Subset[]): CardFont[] {
  const { resolve } = createRequire(import.meta.url);
  return styles.flatMap(({ weight, style }) =>
    parts.map((subset) => {
      const file = `@fontsource/source-serif-4/files/source-serif-4-${subset}-${weight}-${style}.woff`;
      return { name: `serif ${subset}`, data: readFileSync(resolve(file)), weight, style };
    }),
  );
}

/** All parts as one CSS `font-family`. */
export const cardFontFamily = subsets.map((subset) => `"serif ${subset}"`).join(', ');
