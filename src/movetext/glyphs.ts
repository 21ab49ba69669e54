/**
 * Numeric annotation glyphs: what each number means and which sign a printed book has for it.
 *
 * Meanings of 0 to 139: PGN standard (1994-03-12), section 10; most come in pairs, the even
 * number for White and the odd one for Black. The standard gives signs for 1 to 6 only. The other
 * signs, and the numbers from 140, are de facto: common practice, no binding source. So are the
 * words for 2 to 6 and 10, in which books and the handbook speak of a move: the standard has "poor",
 * "very good", "very poor", "speculative" and "questionable move", and "drawish position".
 */
interface GlyphEntry {
  readonly meaning: string;
  readonly sign?: string;
}

const single: readonly (readonly [nag: number, meaning: string, sign?: string])[] = [
  [0, 'no annotation'],
  [1, 'good move', '!'],
  [2, 'mistake', '?'],
  [3, 'excellent move', '!!'],
  [4, 'blunder', '??'],
  [5, 'interesting move', '!?'],
  [6, 'dubious move', '?!'],
  [7, 'forced move (all others lose quickly)', '□'],
  [8, 'singular move (no reasonable alternatives)'],
  [9, 'worst move'],
  [10, 'equal position', '='],
  [11, 'equal chances, quiet position', '='],
  [12, 'equal chances, active position', '='],
  [13, 'unclear position', '∞'],
  [140, 'with the idea', '∆'],
  [141, 'aimed against', '∇'],
  [142, 'better is', '⌓'],
  [143, 'worse is'],
  [144, 'equivalent is'],
  [145, "editor's remark", 'RR'],
  [146, 'novelty', 'N'],
];

/** What is said of one side from number 14 on; the signs are those for White and for Black. */
const paired: readonly (readonly [
  predicate: string,
  whiteSign?: string | undefined,
  blackSign?: string | undefined,
])[] = [
  ['has a slight advantage', '⩲', '⩱'],
  ['has a moderate advantage', '±', '∓'],
  ['has a decisive advantage', '+-', '-+'],
  ['has a crushing advantage', '+-', '-+'],
  ['is in zugzwang', '⨀', '⨀'],
  ['has a slight space advantage'],
  ['has a moderate space advantage', '○', '○'],
  ['has a decisive space advantage'],
  ['has a slight time (development) advantage'],
  ['has a moderate time (development) advantage', '⟳', '⟳'],
  ['has a decisive time (development) advantage'],
  ['has the initiative', '↑', '↑'],
  ['has a lasting initiative'],
  ['has the attack', '→', '→'],
  ['has insufficient compensation for material deficit'],
  ['has sufficient compensation for material deficit', '=∞', '=∞'],
  ['has more than adequate compensation for material deficit'],
  ['has a slight center control advantage'],
  ['has a moderate center control advantage'],
  ['has a decisive center control advantage'],
  ['has a slight kingside control advantage'],
  ['has a moderate kingside control advantage'],
  ['has a decisive kingside control advantage'],
  ['has a slight queenside control advantage'],
  ['has a moderate queenside control advantage'],
  ['has a decisive queenside control advantage'],
  ['has a vulnerable first rank'],
  ['has a well protected first rank'],
  ['has a poorly protected king'],
  ['has a well protected king'],
  ['has a poorly placed king'],
  ['has a well placed king'],
  ['has a very weak pawn structure'],
  ['has a moderately weak pawn structure'],
  ['has a moderately strong pawn structure'],
  ['has a very strong pawn structure'],
  ['has poor knight placement'],
  ['has good knight placement'],
  ['has poor bishop placement'],
  ['has good bishop placement'],
  ['has poor rook placement'],
  ['has good rook placement'],
  ['has poor queen placement'],
  ['has good queen placement'],
  ['has poor piece coordination'],
  ['has good piece coordination'],
  ['has played the opening very poorly'],
  ['has played the opening poorly'],
  ['has played the opening well'],
  ['has played the opening very well'],
  ['has played the middlegame very poorly'],
  ['has played the middlegame poorly'],
  ['has played the middlegame well'],
  ['has played the middlegame very well'],
  ['has played the ending very poorly'],
  ['has played the ending poorly'],
  ['has played the ending well'],
  ['has played the ending very well'],
  ['has slight counterplay'],
  ['has moderate counterplay', '⇆', '⇆'],
  ['has decisive counterplay'],
  ['has moderate time control pressure'],
  ['has severe time control pressure', '⊕', '⊕'],
];
const firstPaired = 14;

const table = new Map<number, GlyphEntry>();
for (const [nag, meaning, sign] of single) table.set(nag, makeEntry(meaning, sign));
for (const [index, [predicate, whiteSign, blackSign]] of paired.entries()) {
  const nag = firstPaired + 2 * index;
  table.set(nag, makeEntry(`White ${predicate}`, whiteSign));
  table.set(nag + 1, makeEntry(`Black ${predicate}`, blackSign));
}

function makeEntry(meaning: string, sign: string | undefined): GlyphEntry {
  return sign === undefined ? { meaning } : { meaning, sign };
}

/** The largest number a glyph may have (PGN standard, 8.2.4). */
export const largestNag = 255;

/** The sign that a printed book has for the glyph, if it has one: `±` for 16. */
export function glyphSign(nag: number): string | undefined {
  return table.get(nag)?.sign;
}

/** What the glyph says, in English, if it has a meaning: `White has a moderate advantage` for 16. */
export function glyphMeaning(nag: number): string | undefined {
  return table.get(nag)?.meaning;
}

/** All glyphs that have a sign, by their numbers. */
export function glyphsWithSigns(): number[] {
  return [...table].flatMap(([nag, { sign }]) => (sign === undefined ? [] : [nag]));
}

/** Whether the glyph judges who stands better, and by how much: 10 to 21. */
export function isAssessment(nag: number): boolean {
  return Number.isInteger(nag) && nag >= 10 && nag <= 21;
}

/** Whether the glyph is one of the six that are written right after a move: `!` to `?!`, 1 to 6. */
export function isMoveSuffix(nag: number): boolean {
  return Number.isInteger(nag) && nag >= 1 && nag <= 6;
}
