import { align } from './align.ts';
import { carryDirectives } from './carry-directives.ts';
import type { TranslationUnit } from './chapter-units.ts';
import { applyEdits, type Edit } from './edits.ts';
import { marksOf } from './mark-words.ts';
import { languageTag } from './marks.ts';
import type { OriginUnit } from './origin.ts';
import { hash } from './origin.ts';

/** A unit with the text of its file. */
export interface UnitInText {
  readonly unit: TranslationUnit;
  readonly text: string;
}

/**
 * The original's block as it is now, with the words that were translated in the place of those that they were made of.
 * @param was the original's block when it was translated.
 * @returns nothing where nobody can tell which words stand for which, or where translated words would be lost.
 */
export function rebuildBlock(
  original: UnitInText,
  translated: UnitInText,
  was: OriginUnit,
  source: string,
): string | undefined {
  const now = original.unit.texts;
  const here = translated.unit.texts;
  if (was.texts.length !== here.length) return undefined;
  const { open, changed } = languageTag(source);
  const edits: Edit[] = [];
  const prints = now.map(({ words }) => hash(words));
  for (const [i, j] of align(was.texts, prints, String, () => '')) {
    const to = j === undefined ? undefined : now[j];
    const from = i === undefined ? undefined : here[i];
    if (to === undefined) return undefined;
    if (from === undefined) {
      edits.push(...marksOf([to], original.text, source));
      continue;
    }
    const mark =
      from.mark === undefined && was.texts[i ?? 0] !== prints[j ?? 0] ? changed : undefined;
    const start = from.place.start.offset;
    const { whole } = from;
    const words = translated.text.slice(start, whole.end.offset);
    const lead = translated.text.slice(whole.start.offset, start);
    // What was never translated is taken from the original anew.
    const text =
      from.mark === 'open'
        ? original.text.slice(to.whole.start.offset, to.place.start.offset) +
          open +
          original.text.slice(to.place.start.offset, to.whole.end.offset)
        : carryDirectives(
            original.text.slice(to.whole.start.offset, to.whole.end.offset),
            lead + (mark ?? '') + words,
          );
    edits.push({ at: to.whole.start.offset, end: to.whole.end.offset, text });
  }
  const { start, end } = original.unit.place;
  const inBlock = edits.map((edit) => ({
    ...edit,
    at: edit.at - start.offset,
    end: edit.end - start.offset,
  }));
  return applyEdits(original.text.slice(start.offset, end.offset), inBlock);
}
