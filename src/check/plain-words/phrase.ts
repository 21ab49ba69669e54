/** Phrases of a language as regular expressions, and what their words mean. */
import { type Color, type PieceKind, pieceKinds, type Square } from '../../chess/index.ts';
import { type Mention, numberSource, readMention, sanSource } from './mentions.ts';
import type { Vocabulary } from './vocabulary.ts';

export interface Meaning {
  readonly kind?: PieceKind;
  readonly color?: Color;
  /** Who is spoken of; `us` is the side of the course. */
  readonly side?: Color | 'us';
  readonly squares: readonly Square[];
  /** 1 (a) to 8 (h). */
  readonly file?: number;
  readonly count?: number;
  readonly move?: Mention;
  readonly denied: boolean;
  /** Other words that the phrase told apart. */
  readonly words: Readonly<Record<string, string>>;
}

export interface Match {
  readonly start: number;
  readonly end: number;
  /** Whether it may stand only where a sentence begins. */
  readonly anchored: boolean;
  readonly meaning: Meaning;
}

const square = '[a-h][1-8]';

export type PhraseFinder = (sentence: string) => Iterable<Match>;

export function compilePhrase(source: string, vocabulary: Vocabulary): PhraseFinder {
  const anchored = source.startsWith('^');
  const body = expand(source.replace(/^\^/, ''), vocabulary);
  const before = anchored ? '^["“„«(¡¿]*' : '(?<![\\p{L}\\p{N}])';
  // V8 takes a millisecond to make ready for all letters: only for a sentence that has the words.
  const words = new RegExp(anchored ? `^["“„«(¡¿]*(?:${body})` : body, 'iu');
  let pattern: RegExp | undefined;
  return function* (sentence) {
    if (!words.test(sentence)) return;
    pattern ??= new RegExp(`${before}(?:${body})(?![\\p{L}\\p{N}])`, 'giu');
    for (const found of sentence.matchAll(pattern)) {
      const meaning = meaningOf(joinGroups(found.groups ?? {}), vocabulary);
      yield { start: found.index, end: found.index + found[0].length, anchored, meaning };
    }
  };
}

function expand(source: string, vocabulary: Vocabulary): string {
  const { pieces, colors, sides, owners, numbers, parts, us } = vocabulary;
  const any = (words: readonly string[]) => `(?:${words.join('|')})`;
  const known: Record<string, string> = {
    piece: `(?<piece>${any(Object.values(pieces))})`,
    square: `(?<square>${square})`,
    squares: `(?<squares>${square}(?:(?:, ?| <and> |, <and> )(?:<at> )?${square})*(?![/-]|,? <or> (?:<at> )?${square}))`,
    file: '(?<file>[a-h])',
    color: `(?<color>${any(Object.values(colors))})`,
    side: `(?<side>${any([...Object.values(sides), us])})`,
    owner: `(?<owner>${any(Object.values(owners ?? { none: '(?!)' }))})`,
    number: `(?<number>\\d|${any(numbers)})`,
    move: `(?<move>${numberSource}${sanSource(vocabulary)})`,
  };
  let text = source;
  // Parts may hold names too; none holds itself.
  for (let depth = 0; depth < 4; depth++) {
    text = text.replace(/(?<!\(\?)<([a-z]+)>/g, (whole, name: string) => {
      const part = parts[name];
      return known[name] ?? (part === undefined ? whole : `(?:${part})`);
    });
  }
  return numberGroups(text);
}

/** A name may stand twice in a phrase, where only one of its places is filled: `color`, `color_`. */
function numberGroups(source: string): string {
  const seen = new Map<string, number>();
  return source.replace(/\(\?<([a-z]+)>/g, (_group, name: string) => {
    const count = seen.get(name) ?? 0;
    seen.set(name, count + 1);
    return `(?<${name}${'_'.repeat(count)}>`;
  });
}

function joinGroups(groups: Record<string, string | undefined>): Record<string, string> {
  const filled = Object.entries(groups).filter(
    (entry): entry is [string, string] => entry[1] !== undefined,
  );
  return Object.fromEntries(filled.map(([name, word]) => [name.replace(/_+$/, ''), word]));
}

function meaningOf(groups: Record<string, string | undefined>, vocabulary: Vocabulary): Meaning {
  const { piece, square, squares, file, color, side, owner, number, move, denied, ...words } =
    groups;
  const kind = piece && pieceKinds.find((name) => is(piece, vocabulary.pieces[name]));
  const owned = owner && colorIn(owner, vocabulary.owners);
  const own = (color && colorIn(color, vocabulary.colors)) || owned;
  const who =
    side && (colorIn(side, vocabulary.sides) ?? (is(side, vocabulary.us) ? 'us' : undefined));
  const told = Object.entries(words).flatMap(([name, word]) =>
    word === undefined ? [] : [[name, word.toLowerCase()] as const],
  );
  return {
    ...(kind && { kind }),
    ...(own && { color: own }),
    ...(who && { side: who }),
    squares: (squares ?? square ?? '').toLowerCase().match(/[a-h][1-8]/g) ?? [],
    ...(file && { file: file.toLowerCase().charCodeAt(0) - 96 }),
    ...(number && { count: countOf(number, vocabulary) }),
    ...(move && { move: readMention(move, vocabulary) }),
    denied: denied !== undefined,
    words: Object.fromEntries(told),
  };
}

function colorIn(word: string, table: Vocabulary['owners']): Color | undefined {
  if (!table) return undefined;
  return is(word, table.white) ? 'white' : is(word, table.black) ? 'black' : undefined;
}

function countOf(word: string, { numbers }: Vocabulary): number {
  return /^\d$/.test(word) ? Number(word) : numbers.findIndex((source) => is(word, source)) + 1;
}

const exact = new Map<string, RegExp>();

function is(word: string, source: string): boolean {
  const known = exact.get(source) ?? new RegExp(`^(?:${source})$`, 'iu');
  exact.set(source, known);
  return known.test(word);
}
