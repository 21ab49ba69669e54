import type { Place } from '../diagnostics/index.ts';
import type { CourseProblem } from '../read/index.ts';
import { align } from './align.ts';
import type { BoardItem } from './board-items.ts';
import { changedTexts, type Names } from './changed-texts.ts';
import type { TranslationUnit } from './chapter-units.ts';
import { hashBag, hashBoard, type OriginUnit } from './origin.ts';
import { translatedFrom, unitsBefore } from './units-before.ts';

/** How a translated chapter stands to its original. */
export interface Comparison {
  readonly problems: readonly CourseProblem[];
  /** Words that wait for their translation, of how many texts. */
  readonly open: { readonly texts: number; readonly words: number };
  /** Whether readers get it: its board is that of the original, and none of its words wait. */
  readonly isReady: boolean;
}

/**
 * Compares a translated chapter with its original, unit by unit. What differs because the original has changed since
 * is stale; what differs otherwise is wrong.
 * @param origin the original's units when it was translated; absent where nobody knows.
 */
export function compareChapter(
  original: readonly TranslationUnit[],
  translated: readonly TranslationUnit[],
  origin: readonly OriginUnit[] | undefined,
  names: Names,
): Comparison {
  const before = unitsBefore(origin ?? [], original);
  const made = translatedFrom(origin ?? [], translated);
  const problems: CourseProblem[] = [];
  let isSame = true;
  let last = translated[0];
  const pairs = align(original, translated, keyOf, ({ kind }) => kind);
  for (const [a, b] of pairs) {
    const from = a === undefined ? undefined : original[a];
    const to = b === undefined ? undefined : translated[b];
    const then = a === undefined ? undefined : before.get(a);
    const isStale = b === undefined ? origin !== undefined && then === undefined : made.has(b);
    const found = from && to ? differencesIn(from, to, then) : oneSided(from, to, last, isStale);
    if (found.length > 0) isSame = false;
    problems.push(...found.map((problem) => withHint(problem, names)));
    last = to ?? last;
  }
  const texts = translated.flatMap((unit) => [...unit.texts, ...unit.prose.texts]);
  const waiting = texts.filter(({ mark }) => mark !== undefined);
  const words = waiting.reduce((sum, text) => sum + countWords(text.words), 0);
  const [first] = waiting;
  if (first) problems.push(openProblem(first.place, waiting.length, words, names));
  const top = translated[0];
  if (origin === undefined && top && isSame) {
    problems.push(unknownOrigin(top.place, names));
  }
  if (origin !== undefined) {
    problems.push(...changedTexts(original, translated, origin, pairs, names));
  }
  return {
    problems,
    open: { texts: waiting.length, words },
    isReady: isSame && waiting.length === 0,
  };
}

export function keyOf({ kind, board }: TranslationUnit): string {
  return `${kind} ${hashBoard(board)}`;
}

type Difference = Omit<CourseProblem, 'hint'>;

function differencesIn(
  from: TranslationUnit,
  to: TranslationUnit,
  was: OriginUnit | undefined,
): Difference[] {
  const pairs = [
    { a: from.board, b: to.board, print: hashBoard, before: was?.board },
    { a: from.prose.board, b: to.prose.board, print: hashBag, before: was?.prose.board },
  ];
  return pairs.flatMap(({ a, b, print, before }): Difference[] => {
    if (print(a) === print(b)) return [];
    const [there, here, near] = firstDifference(a, b, print === hashBag);
    const rule = before === print(b) ? 'translation-stale' : 'translation-differs';
    const message =
      there && here
        ? `The original has ${there.says} where the translation has ${here.says}.`
        : there
          ? `The original has ${there.says}, and the translation lacks it.`
          : `The translation has ${here?.says ?? 'more'}, and the original does not.`;
    return [
      {
        rule,
        place: here?.place ?? near?.place ?? to.place,
        message:
          rule === 'translation-stale'
            ? `Since it was translated: ${lowerFirst(message)}`
            : message,
        related: [{ place: there?.place ?? from.place, message: 'the original' }],
      },
    ];
  });
}

function firstDifference(
  a: TranslationUnit['board'],
  b: TranslationUnit['board'],
  isBag: boolean,
): readonly [
  there: BoardItem | undefined,
  here: BoardItem | undefined,
  near?: BoardItem | undefined,
] {
  if (isBag) {
    const left = [...b];
    const missing = a.filter(({ says }) => {
      const at = left.findIndex((item) => item.says === says);
      if (at >= 0) left.splice(at, 1);
      return at < 0;
    });
    return [missing[0], left[0]];
  }
  const at = a.findIndex((item, index) => item.says !== b[index]?.says);
  const index = at < 0 ? a.length : at;
  const [there, here] = [a[index], b[index]];
  if (there !== undefined && here !== undefined) {
    if (a[index + 1]?.says === here.says) return [there, undefined, b[index - 1]];
    if (b[index + 1]?.says === there.says) return [undefined, here];
  }
  return [there, here, b[index - 1]];
}

function oneSided(
  from: TranslationUnit | undefined,
  to: TranslationUnit | undefined,
  last: TranslationUnit | undefined,
  isStale: boolean,
): Difference[] {
  if (from) {
    return last === undefined
      ? []
      : [
          {
            rule: isStale ? 'translation-stale' : 'translation-differs',
            place: endOf(last.place),
            message: isStale
              ? `The original has gained ${nameOf(from)} here since it was translated.`
              : `The translation lacks ${nameOf(from, 'the')} that the original has here.`,
            related: [{ place: from.place, message: 'the original' }],
          },
        ];
  }
  if (to === undefined) return [];
  return [
    {
      rule: isStale ? 'translation-stale' : 'translation-differs',
      place: to.place,
      message: isStale
        ? `Since it was translated, the original has lost ${nameOf(to, 'this')}.`
        : `The original has no such ${kindInWords[to.kind]} here.`,
    },
  ];
}

function withHint(problem: Difference, { command }: Names): CourseProblem {
  return {
    ...problem,
    hint:
      problem.rule === 'translation-stale'
        ? `\`${command} --write\` adds what is new and marks what has changed; until then readers get the original chapter.`
        : 'Words may differ in a translation, the board may not: make it as in the original.',
  };
}

function openProblem(place: Place, texts: number, words: number, { source }: Names): CourseProblem {
  const count = texts === 1 ? '1 text' : `${texts} texts`;
  return {
    rule: 'translation-open',
    place,
    message: `${count} of this file (${words} words) ${texts === 1 ? 'waits' : 'wait'} for a translation.`,
    hint: `Write ${texts === 1 ? 'it' : 'each'} anew and take the mark before it out; until then readers get it in ${source}.`,
  };
}

function unknownOrigin(place: Place, { command }: Names): CourseProblem {
  return {
    rule: 'translation-stale',
    place,
    message: 'Nothing says which edition of the original this was made of.',
    hint: `\`${command} --write\` takes it for a translation of the original as it is now, and notes that.`,
  };
}

export function countWords(text: string): number {
  return text.match(/\p{L}[\p{L}\p{M}'-]*/gu)?.length ?? 0;
}

function endOf({ file, end }: Place): Place {
  return { file, start: end, end };
}

const kindInWords: Readonly<Record<TranslationUnit['kind'], string>> = {
  front: 'front matter',
  heading: 'heading',
  moves: 'block of moves',
  diagram: 'diagram',
  exercise: 'exercise',
  game: 'game',
  pattern: 'pattern',
};

function nameOf({ kind }: TranslationUnit, article?: string): string {
  const name = kindInWords[kind];
  return `${article ?? (/^[aeio]/.test(name) ? 'an' : 'a')} ${name}`;
}

function lowerFirst(text: string): string {
  return text[0]?.toLowerCase() + text.slice(1);
}
