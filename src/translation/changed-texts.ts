import type { CourseProblem } from '../read/index.ts';
import type { Pair } from './align.ts';
import type { Part } from './chapter-parts.ts';
import type { Names } from './compare-chapter.ts';
import { hash, type OriginPart } from './origin.ts';
import { partsBefore } from './parts-before.ts';
import type { Text } from './texts.ts';

/** Words of the original that have changed since they were translated. */
export interface ChangedText {
  readonly now: Text;
  /** The translation's words of them, where it can be told which. */
  readonly here: Text | undefined;
}

/** A stretch of words whose number has changed, so that nobody can tell which stands for which. */
export interface ChangedStretch {
  readonly from: Part;
  readonly to: Part;
  /** The first words of the original that are new there. */
  readonly now: Text | undefined;
}

/** What was told of the original and is told otherwise now, a finding each. */
export function changedTexts(
  original: readonly Part[],
  translated: readonly Part[],
  origin: readonly OriginPart[],
  pairs: readonly Pair[],
  { command }: Names,
): CourseProblem[] {
  const hint = `Bring the words up to date; \`${command} --write\` marks them first, and takes them for done once the mark is gone.`;
  return changesOf(original, translated, origin, pairs).flatMap(({ part, stretch, texts }) => {
    if (stretch) {
      const place = stretch.to.place;
      const last = place.end.line === place.start.line ? place.end : place.start;
      return [
        {
          rule: 'translation-stale' as const,
          place: { file: place.file, start: place.start, end: last },
          message: `The original has other texts ${part === 'prose' ? 'behind this' : 'in this'} than when it was translated.`,
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
              message: 'The original has other words here than when this was translated.',
              hint,
              related: [{ place: now.place, message: 'the original' }],
            },
          ],
    );
  });
}

interface Change {
  readonly part: 'own' | 'prose';
  readonly stretch?: ChangedStretch;
  readonly texts: readonly ChangedText[];
}

/** What changed in the words of parts that are in the original, in the translation, and were there before. */
function changesOf(
  original: readonly Part[],
  translated: readonly Part[],
  origin: readonly OriginPart[],
  pairs: readonly Pair[],
): Change[] {
  const before = partsBefore(origin, original);
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
  part: Change['part'],
  parts: { readonly from: Part; readonly to: Part },
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
      return [{ part, texts }];
    }
  }
  return [{ part, stretch: { ...parts, now: changed[0] }, texts: [] }];
}
