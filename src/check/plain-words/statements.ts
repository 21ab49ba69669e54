/** What the sentences of a text state, as far as it is sure that they speak of the board in front of them. */
import type { Square } from '../../chess/index.ts';
import { type FormName, forms } from './forms/index.ts';
import { bareMove, numberSource, sanSource } from './mentions.ts';
import type { Passage } from './passage.ts';
import { compilePhrase, type Match, type PhraseFinder } from './phrase.ts';
import { type Sentence, sentencesIn } from './sentences.ts';
import { moveSign } from './text.ts';
import type { Vocabulary } from './vocabulary.ts';

export interface Stated {
  readonly form: FormName;
  readonly meaning: Match['meaning'];
  /** Offsets in the passage's text. */
  readonly start: number;
  readonly end: number;
  readonly sentenceEnd: number;
  readonly words: string;
}

interface Compiled {
  /** Whether a text can hold any statement at all. */
  readonly quick: RegExp;
  /** The same of one without digits, which names no square. */
  readonly quickInWords: RegExp;
  readonly finders: readonly {
    readonly form: FormName;
    readonly key: RegExp;
    readonly find: readonly PhraseFinder[];
  }[];
  readonly unreal: RegExp;
  readonly placing: RegExp;
  /** A piece on a square that is only thought of. */
  readonly imagined: RegExp;
  readonly denial: RegExp;
  readonly presupposing: RegExp;
  /** Where another main clause begins. */
  readonly joint: RegExp;
  readonly numbered: RegExp;
  /** A move without a number, other than a bare square; a push such as f2-f3; one that moves in code. */
  readonly bare: RegExp;
}

const compiled = new WeakMap<Vocabulary, Compiled>();

function compile(vocabulary: Vocabulary): Compiled {
  const word = (source: string) =>
    new RegExp(`(?<![\\p{L}\\p{N}])(?:${source})(?![\\p{L}\\p{N}])`, 'iu');
  const phrases = Object.entries(vocabulary.phrases) as [
    FormName,
    NonNullable<Vocabulary['phrases'][FormName]>,
  ][];
  const san = sanSource(vocabulary);
  // Without `u`, which only some languages need, such a test takes half the time.
  const flags = phrases.some(([, { key }]) => key.unicode) ? 'iu' : 'i';
  const anyOf = (some: typeof phrases) =>
    new RegExp([...new Set(some.map(([, { key }]) => key.source))].join('|'), flags);
  const made: Compiled = {
    quick: anyOf(phrases),
    quickInWords: anyOf(phrases.filter(([form]) => form !== 'piece-on-square')),
    finders: phrases.map(([form, { key, forms: sources }]) => ({
      form,
      key,
      find: sources.map((source) => compilePhrase(source, vocabulary)),
    })),
    unreal: word(vocabulary.unreal),
    placing: word(vocabulary.placing),
    imagined: word(
      `${vocabulary.indefinite} (?:\\p{L}+ )?(?:${Object.values(vocabulary.pieces).join('|')}) (?:\\p{L}+ )?(?:${vocabulary.parts.at}) [a-h][1-8]`,
    ),
    denial: word(vocabulary.denial),
    presupposing: new RegExp(`^(?:${vocabulary.presupposing})`, 'iu'),
    joint: new RegExp(`[,:–—] (?:${vocabulary.joint})(?![\\p{L}])`, 'iu'),
    numbered: new RegExp(`(?<![\\p{L}\\p{N}])${numberSource}${san}`, 'u'),
    bare: bareMove(vocabulary),
  };
  compiled.set(vocabulary, made);
  return made;
}

/** All statements of a passage that are not left alone. */
export function statementsIn(passage: Passage, vocabulary: Vocabulary): Stated[] {
  const stated: Stated[] = [];
  const known = compiled.get(vocabulary) ?? compile(vocabulary);
  const { text } = passage.text;
  // A position in code is what such words speak of.
  if (!mayState(text, known) || passage.text.code.some((code) => /^(?:[^\s/]+\/){7}/.test(code)))
    return stated;
  const sentences = sentencesIn(passage.text, vocabulary.language);
  const quotes = quotedIn(text);
  for (const [at, sentence] of sentences.entries()) {
    if (sentences.length > 1 && !mayState(sentence.text, known)) continue;
    const found: Stated[] = [];
    for (const { form, key, find } of known.finders) {
      if (!key.test(sentence.text)) continue;
      for (const finder of find) {
        for (const match of finder(sentence.text)) {
          const start = sentence.start + match.start;
          const end = sentence.start + match.end;
          if (found.some((other) => other.form === form && start < other.end && other.start < end))
            continue;
          const around = [sentences[at - 1], sentence, sentences[at + 1]];
          if (
            isWithin(quotes, start) ||
            isLeftAlone({ form, match, sentence, around, passage, known })
          )
            continue;
          const words = sentence.text.slice(match.start, match.end).replace(/\s+/g, ' ');
          found.push({
            form,
            meaning: match.meaning,
            start,
            end,
            sentenceEnd: sentence.start + sentence.text.length,
            words,
          });
        }
      }
    }
    stated.push(...found);
  }
  return stated;
}

function mayState(text: string, { quick, quickInWords }: Compiled): boolean {
  return (/\d/.test(text) ? quick : quickInWords).test(text);
}

/** Where words are quoted: an author does not say them himself. */
export function quotedIn(text: string): readonly (readonly [start: number, end: number])[] {
  if (!/["“„«]/.test(text)) return [];
  return [...text.matchAll(/“[^”]*”|„[^“]*“|«[^»]*»|"[^"]*"/gu)].map(({ 0: words, index }) => [
    index,
    index + words.length,
  ]);
}

export function isWithin(spans: ReturnType<typeof quotedIn>, offset: number): boolean {
  return spans.some(([start, end]) => start <= offset && offset < end);
}

interface Reading {
  readonly form: FormName;
  readonly match: Match;
  readonly sentence: Sentence;
  readonly around: readonly (Sentence | undefined)[];
  readonly passage: Passage;
  readonly known: Compiled;
}

/** Whether the words around a statement may make it one of another position than the one on the board. */
function isLeftAlone({ form, match, sentence, around, passage, known }: Reading): boolean {
  const { names, alone, reach } = forms[form] as (typeof forms)[
    | 'piece-on-square'
    | 'to-move'
    | 'check'];
  // What only begins a sentence is the name of a topic where no sentence is looked for.
  if (match.anchored && ['front', 'heading', 'row'].includes(passage.kind)) return true;
  if (alone === 'always') return passage.kind === 'question';
  if (alone === 'at-start' && match.anchored) return false;
  const before = sentence.text.slice(0, match.start);
  const [clause = ''] = sentence.text.slice(match.end).split(known.joint);
  const behind = names ? clause.replace(known.presupposing, '_') : clause;
  const rest = `${before}${'_'.repeat(match.end - match.start)}${behind}`;
  if (/\?(?=\s|$|["”»“)])/.test(sentence.text)) return true;
  if (known.unreal.test(rest) || known.numbered.test(rest)) return true;
  if (reach === 'here' && rest.includes(moveSign)) return true;
  if (passage.kind === 'row' && (known.bare.test(rest) || rest.includes(moveSign))) return true;
  if (!names) {
    const lead = before.slice(Math.max(before.lastIndexOf(','), before.lastIndexOf(':')) + 1);
    return known.bare.test(before) || known.denial.test(lead);
  }
  return (
    known.placing.test(rest) ||
    known.imagined.test(rest) ||
    isImagined(match.meaning.squares, { match, sentence, around, passage })
  );
}

/**
 * Whether a square is spoken of by other words too: then a piece may be on its way to it, and the words that
 * name it there speak of that.
 */
function isImagined(
  squares: readonly Square[],
  { match, sentence, around, passage }: Omit<Reading, 'form' | 'known'>,
): boolean {
  const own = [sentence.text.slice(0, match.start), sentence.text.slice(match.end)];
  const others = around.flatMap((other) => (!other || other === sentence ? [] : [other.text]));
  const words = [...own, ...others, ...passage.text.code].join(' ').toLowerCase();
  const arrows = passage.text.directives.flatMap(({ name, argument }) =>
    name === 'plan' ? [argument] : [],
  );
  return squares.some((square) => words.includes(square) || arrows.join(' ').includes(square));
}
