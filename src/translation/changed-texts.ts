import type { CourseProblem } from '../read/index.ts';
import type { Pair } from './align.ts';
import type { TranslationUnit } from './chapter-units.ts';
import { hash, type OriginUnit } from './origin.ts';
import type { Text } from './texts.ts';
import { unitsBefore } from './units-before.ts';

export interface Names {
  /** The original's language in words, such as `English`. */
  readonly source: string;
  /** The command that brings the translation up to date. */
  readonly command: string;
}

/** Words of the original that have changed since they were translated. */
export interface ChangedText {
  readonly now: Text;
  /** The translation's words of them, where it can be told which. */
  readonly here: Text | undefined;
}

/** A stretch of words whose number has changed, so that nobody can tell which stands for which. */
export interface ChangedStretch {
  readonly from: TranslationUnit;
  readonly to: TranslationUnit;
  /** The first words of the original that are new there. */
  readonly now: Text | undefined;
}

/** What was told of the original and is told otherwise now, a finding each. */
export function changedTexts(
  original: readonly TranslationUnit[],
  translated: readonly TranslationUnit[],
  origin: readonly OriginUnit[],
  pairs: readonly Pair[],
  { command }: Names,
): CourseProblem[] {
  const hint = `Bring the words up to date; \`${command} --write\` marks them first, and takes them for done once the mark is gone.`;
  return changesOf(original, translated, origin, pairs).flatMap(({ unit, stretch, texts }) => {
    if (stretch) {
      const place = stretch.to.place;
      const last = place.end.line === place.start.line ? place.end : place.start;
      return [
        {
          rule: 'translation-stale' as const,
          place: { file: place.file, start: place.start, end: last },
          message: `The original's texts ${unit === 'prose' ? 'behind this' : 'in this'} have changed since it was translated.`,
          hint,
          related: [{ place: stretch.now?.place ?? stretch.from.place, message: 'the original' }],
        },
      ];
    }
    return texts.flatMap(({ now, here }) =>
      here === undefined || here.mark !== undefined
        ? []
        : [
            {
              rule: 'translation-stale' as const,
              place: here.place,
              message: "The original's words have changed since this was translated.",
              hint,
              related: [{ place: now.place, message: 'the original' }],
            },
          ],
    );
  });
}

interface Change {
  readonly unit: 'own' | 'prose';
  readonly stretch?: ChangedStretch;
  readonly texts: readonly ChangedText[];
}

/** What changed in the words of units that are in the original, in the translation, and were there before. */
function changesOf(
  original: readonly TranslationUnit[],
  translated: readonly TranslationUnit[],
  origin: readonly OriginUnit[],
  pairs: readonly Pair[],
): Change[] {
  const before = unitsBefore(origin, original);
  return pairs.flatMap(([a, b]): Change[] => {
    const from = a === undefined ? undefined : original[a];
    const to = b === undefined ? undefined : translated[b];
    const was = a === undefined ? undefined : before.get(a);
    if (!from || !to || !was) return [];
    return [
      ...changeIn('own', { from, to }, was.texts, from.texts, to.texts),
      ...changeIn('prose', { from, to }, was.prose.texts, from.prose.texts, to.prose.texts),
    ];
  });
}

function changeIn(
  unit: Change['unit'],
  units: { readonly from: TranslationUnit; readonly to: TranslationUnit },
  was: readonly string[],
  now: readonly Text[],
  here: readonly Text[],
): Change[] {
  const changed = now.filter(({ words }, index) =>
    was.length === now.length ? hash(words) !== was[index] : !was.includes(hash(words)),
  );
  if (was.length === now.length) {
    if (changed.length === 0) return [];
    if (here.length === now.length) {
      const texts = changed.map((text) => ({ now: text, here: here[now.indexOf(text)] }));
      return [{ unit, texts }];
    }
  }
  return [{ unit, stretch: { ...units, now: changed[0] }, texts: [] }];
}
