import type { TranslationUnit } from './chapter-units.ts';
import { applyEdits, type Edit } from './edits.ts';
import { languageTag } from './marks.ts';
import type { Text } from './texts.ts';

/** The original's own text with a mark before each of its words, so that none is taken for a translation. */
export function markWords(text: string, units: readonly TranslationUnit[], source: string): string {
  return applyEdits(text, marksOf(textsIn(units), text, source));
}

/** The edits that put the mark of what is not translated before texts. */
export function marksOf(texts: readonly Text[], text: string, source: string): Edit[] {
  const { open } = languageTag(source);
  return texts.map(({ place: { start } }) => {
    // A text may begin in the line below a directive.
    const spaces = /^\s*/.exec(text.slice(start.offset))?.[0].length ?? 0;
    const at = start.offset + spaces;
    return { at, end: at, text: open };
  });
}

export function textsIn(units: readonly TranslationUnit[]): Text[] {
  return units.flatMap(({ texts, prose }) => [...texts, ...prose.texts]);
}
