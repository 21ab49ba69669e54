import type { Color, PlayedMove } from '../../../chess/types.ts';
import type {
  DrawnOnBoard,
  LookAnswer,
  MoveToWrite,
  WordsToWrite,
} from '../../../contract/desk-write.ts';

/** How a line that is new is written: what its first move is to the line that is there. */
export type Way = 'next' | 'reply' | 'variation' | 'alternative' | 'bad';

/** What the author has said of one position, and has not written yet. */
export interface Said {
  readonly comment: string;
  readonly glyphs: readonly number[];
  readonly claims: readonly string[];
  readonly name: string;
  readonly title: string;
  readonly drawn: readonly { readonly kind: DrawnOnBoard; readonly item: string }[];
  /** Whether a name is said that the position has elsewhere; undecided unless given. */
  readonly same?: boolean;
}

export const nothingSaid: Said = {
  comment: '',
  glyphs: [],
  claims: [],
  name: '',
  title: '',
  drawn: [],
};

/** The ways to write a move of a side at a place, the likeliest first. */
export function waysFor({ side, next }: Pick<LookAnswer, 'side' | 'next'>, color: Color): Way[] {
  const isOwn = side === color;
  if (next.length === 0) return isOwn ? ['next', 'alternative', 'bad'] : ['next', 'bad'];
  if (isOwn) return ['alternative', 'bad', 'variation'];
  return side === 'both' ? ['variation', 'bad'] : ['reply', 'bad'];
}

const mistake = 2;
/** From the good move to the dubious one: a move has one of them. */
const suffixes: readonly number[] = [1, 2, 3, 4, 5, 6];
const badSuffixes: readonly number[] = [2, 4, 6];

/** With a glyph more, in place of the one that says the same kind of thing; without it where it was there. */
export function withGlyph(glyphs: readonly number[], nag: number): readonly number[] {
  if (glyphs.includes(nag)) return glyphs.filter((other) => other !== nag);
  const isSuffix = suffixes.includes(nag);
  return [...glyphs.filter((other) => suffixes.includes(other) !== isSuffix), nag];
}

/** With an item more, or without it where it was there. */
export function toggled<Item>(list: readonly Item[], item: Item): readonly Item[] {
  const isIt = (other: Item) => JSON.stringify(other) === JSON.stringify(item);
  return list.some(isIt) ? list.filter((other) => !isIt(other)) : [...list, item];
}

/** What is sent of what was said; what is empty is left out. */
export function wordsToWrite({ comment, claims, name, title, drawn }: Said): WordsToWrite {
  return {
    ...(comment.trim() !== '' && { comment }),
    ...(claims.length > 0 && { claims }),
    ...(name.trim() !== '' && { name: name.trim() }),
    ...(name.trim() !== '' && title.trim() !== '' && { title: title.trim() }),
    ...(drawn.length > 0 && { drawn }),
  };
}

export function isNothing(said: Said): boolean {
  return said.glyphs.length === 0 && Object.keys(wordsToWrite(said)).length === 0;
}

/**
 * The moves of a line as they are to be written.
 * @param saidOf what the author said of each, by its index.
 * @param sameOf the name of each position that the course has already.
 */
export function movesToWrite(
  moves: readonly PlayedMove[],
  saidOf: (index: number) => Said,
  way?: Way,
  sameOf: (index: number) => string | undefined = () => undefined,
): MoveToWrite[] {
  return moves.map(({ san }, index) => {
    const said = saidOf(index);
    const isFirst = index === 0;
    const isBad = isFirst && way === 'bad' && !said.glyphs.some((nag) => badSuffixes.includes(nag));
    const same = sameOf(index);
    const glyphs = isBad ? withGlyph(said.glyphs, mistake) : said.glyphs;
    return {
      san,
      ...(glyphs.length > 0 && { glyphs }),
      ...(isFirst && way === 'alternative' && { option: true }),
      ...(same !== undefined && { same }),
      ...wordsToWrite(said),
    };
  });
}
