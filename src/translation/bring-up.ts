import { align } from './align.ts';
import type { TranslationUnit } from './chapter-units.ts';
import { keyOf } from './compare-chapter.ts';
import { applyEdits, type Edit } from './edits.ts';
import { marksOf, textsIn } from './mark-words.ts';
import { languageTag } from './marks.ts';
import { hash, hashBag, hashBoard, type OriginUnit, originOf } from './origin.ts';
import { rebuildBlock, type UnitInText } from './rebuild-block.ts';
import type { Text } from './texts.ts';
import { translatedFrom, unitsBefore } from './units-before.ts';

/** A document with the units that it was read to. */
export interface DocumentInUnits {
  readonly text: string;
  readonly units: readonly TranslationUnit[];
}

/** What was done to a translation so that it follows its original. */
export interface BroughtUp {
  readonly text: string;
  /** What it is made of now. */
  readonly origin: readonly OriginUnit[];
  /** Units and paragraphs of the original that were put in, their words marked. */
  readonly added: number;
  /** Translated texts that were marked, since the original has other words now. */
  readonly changed: number;
  /** The units of the original, or of the translation, that somebody must mend by hand. */
  readonly left: readonly TranslationUnit[];
}

interface Work {
  readonly original: DocumentInUnits;
  readonly translated: DocumentInUnits;
  readonly source: string;
  readonly edits: Edit[];
  readonly origin: OriginUnit[];
  readonly left: TranslationUnit[];
  added: number;
  changed: number;
}

/**
 * Brings a translation up to date by edits: what is new in the original is put in with marks, translated words whose
 * original has changed get a mark, and no translated word is replaced.
 * @param was the original's units when it was translated.
 */
export function bringUp(
  original: DocumentInUnits,
  translated: DocumentInUnits,
  was: readonly OriginUnit[],
  source: string,
): BroughtUp {
  const work: Work = {
    ...{ original, translated, source, edits: [], origin: [], left: [] },
    ...{ added: 0, changed: 0 },
  };
  const before = unitsBefore(was, original.units);
  const made = translatedFrom(was, translated.units);
  let next = 0;
  for (const [a, b] of align(original.units, translated.units, keyOf, ({ kind }) => kind)) {
    const from = a === undefined ? undefined : original.units[a];
    const to = b === undefined ? undefined : translated.units[b];
    if (b !== undefined) next = b + 1;
    const then = a === undefined ? undefined : before.get(a);
    if (from && to) followUnit(from, to, then, work);
    else if (from && then === undefined) insertUnit(from, next, work);
    else if (from) {
      // It was there and was taken out of the translation: the check says so.
      work.left.push(from);
      if (then) work.origin.push(then);
    } else if (to && b !== undefined) {
      work.left.push(to);
      const lost = made.get(b);
      if (lost) work.origin.push(lost);
    }
  }
  const { edits, origin, left, added, changed } = work;
  return { text: applyEdits(translated.text, edits), origin, left, added, changed };
}

function followUnit(
  from: TranslationUnit,
  to: TranslationUnit,
  was: OriginUnit | undefined,
  work: Work,
): void {
  const isSame = hashBoard(from.board) === hashBoard(to.board);
  if (was === undefined) {
    // It came into the original and into the translation alike.
    if (isSame) work.origin.push(originOf(from));
    else work.left.push(from);
    return;
  }
  const own = followOwn(from, to, was, work);
  const prose = followProse(from, to, was, work);
  const now = originOf(from);
  work.origin.push({
    ...(own ? now : was),
    prose: prose ? now.prose : was.prose,
  });
  if (!own || !prose) work.left.push(from);
}

/** @returns whether the unit's own words and its board are followed. */
function followOwn(
  from: TranslationUnit,
  to: TranslationUnit,
  was: OriginUnit,
  work: Work,
): boolean {
  const isSame = hashBoard(from.board) === hashBoard(to.board);
  const now = from.texts.map(({ words }) => hash(words));
  if (isSame && now.join() === was.texts.join()) return true;
  if (isSame && now.length === was.texts.length && to.texts.length === now.length) {
    markChanged(
      to.texts.filter((_, index) => now[index] !== was.texts[index]),
      work,
    );
    return true;
  }
  // Only what the translation had from the original, and has unchanged, is replaced by what that is now.
  if (was.board !== hashBoard(to.board) || from.kind === 'front' || from.kind === 'heading') {
    return false;
  }
  const unit = (unit: TranslationUnit, { text }: DocumentInUnits): UnitInText => ({ unit, text });
  const text = rebuildBlock(unit(from, work.original), unit(to, work.translated), was, work.source);
  if (text === undefined) return false;
  work.edits.push({ at: to.place.start.offset, end: to.place.end.offset, text });
  work.changed += 1;
  return true;
}

/** @returns whether the prose behind the unit is followed. */
function followProse(
  from: TranslationUnit,
  to: TranslationUnit,
  was: OriginUnit,
  work: Work,
): boolean {
  const now = from.prose.texts.map(({ words }) => hash(words));
  const here = to.prose.texts;
  const isSame = hashBag(from.prose.board) === hashBag(to.prose.board);
  if (now.join() === was.prose.texts.join()) return isSame;
  // Paragraphs that were joined or divided: one mark stands for all of them.
  if (here.length !== was.prose.texts.length) {
    const [first] = here;
    if (first === undefined) return false;
    markChanged([first], work);
    return isSame;
  }
  let after: Text | undefined;
  let isWhole = true;
  for (const [i, j] of align(was.prose.texts, now, String, () => '')) {
    const text = i === undefined ? undefined : here[i];
    if (j === undefined) {
      if (text) markChanged([text], work);
    } else if (i === undefined) {
      isWhole = insertText(from.prose.texts[j], after ?? to, work) && isWhole;
    } else if (was.prose.texts[i] !== now[j] && text) markChanged([text], work);
    after = text ?? after;
  }
  return isWhole && isSame;
}

function markChanged(texts: readonly Text[], work: Work): void {
  const { changed } = languageTag(work.source);
  for (const { place, mark } of texts) {
    if (mark !== undefined) continue;
    work.edits.push({ at: place.start.offset, end: place.start.offset, text: changed });
    work.changed += 1;
  }
}

/** Puts a unit in, with the prose behind it, before the translation's unit of an index. */
function insertUnit(from: TranslationUnit, next: number, work: Work): void {
  const { original, translated, source, edits, origin } = work;
  const start = from.place.start.offset;
  const index = original.units.indexOf(from);
  const end = original.units[index + 1]?.place.start.offset ?? original.text.length;
  const inUnit = marksOf(textsIn([from]), original.text, source).map((edit) => ({
    ...edit,
    at: edit.at - start,
    end: edit.end - start,
  }));
  const text = applyEdits(original.text.slice(start, end), inUnit).trimEnd();
  const before = translated.units[next];
  const at = before?.place.start.offset ?? translated.text.trimEnd().length;
  edits.push({ at, end: at, text: before ? `${text}\n\n` : `\n\n${text}` });
  origin.push(originOf(from));
  work.added += 1;
}

/** Puts a paragraph behind another one, or behind what it follows. @returns whether it could. */
function insertText(text: Text | undefined, after: Text | TranslationUnit, work: Work): boolean {
  const { original, translated, source, edits } = work;
  // A row of a table or an item of a list is no paragraph of its own.
  if (text === undefined || text.whole.start.column > 1) return false;
  const { start, end } = text.whole;
  const [mark] = marksOf([text], original.text, source);
  const written = original.text.slice(start.offset, end.offset);
  const marked = mark
    ? applyEdits(written, [{ ...mark, at: mark.at - start.offset, end: mark.end - start.offset }])
    : written;
  const isText = 'words' in after;
  const at = isText
    ? after.whole.end.offset
    : after.kind === 'front'
      ? endOfFront(translated.text)
      : after.place.end.offset;
  edits.push({ at, end: at, text: isText || at > 0 ? `\n\n${marked}` : `${marked}\n\n` });
  work.added += 1;
  return true;
}

function endOfFront(text: string): number {
  const front = /^---[ \t]*\r?\n[\s\S]*?^---[ \t]*$/m.exec(text);
  return front?.index === 0 ? front[0].length : 0;
}
