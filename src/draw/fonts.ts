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

let loaded: CardFont[] | undefined;

/** Source Serif 4 from its package, read once. Each part has a family name of its own. */
export function cardFonts(): CardFont[] {
  const { resolve } = createRequire(import.meta.url);
  loaded ??= styles.flatMap(({ weight, style }) =>
    subsets.map((subset) => {
      const file = `@fontsource/source-serif-4/files/source-serif-4-${subset}-${weight}-${style}.woff`;
      return { name: `serif ${subset}`, data: readFileSync(resolve(file)), weight, style };
    }),
  );
  return loaded;
}

/** All parts as one CSS `font-family`. */
export const cardFontFamily = subsets.map((subset) => `"serif ${subset}"`).join(', ');
