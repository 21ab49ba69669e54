/** What a catalogue says of glyphs: the numbers that speak of no side, and the pairs from 14 on. */
export interface GlyphWords {
  readonly single: Readonly<Record<number, string>>;
  readonly white: string;
  readonly black: string;
  /** What is said of a side, in the order of the numbers (PGN standard, section 10). */
  readonly predicates: readonly string[];
}

const firstPaired = 14;

/** The meaning of a numeric annotation glyph: even numbers from 14 on speak of White, odd ones of Black. */
export function makeGlyphs({ single, white, black, predicates }: GlyphWords) {
  return (nag: number): string | undefined => {
    const predicate = predicates[Math.floor((nag - firstPaired) / 2)];
    if (predicate === undefined) return single[nag];
    return `${nag % 2 === 0 ? white : black} ${predicate}`;
  };
}
