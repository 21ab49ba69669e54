import { type CourseFiles, documentsOf, type SourceFile, writeLetters } from '../read/index.ts';
import { type BroughtUp, bringUp, type DocumentInUnits } from './bring-up.ts';
import type { TranslationUnit } from './chapter-units.ts';
import { compareChapter, countWords } from './compare-chapter.ts';
import { markWords, textsIn } from './mark-words.ts';
import { languageTag } from './marks.ts';
import { type OriginUnit, originFile, originOf, readOrigin, writeOrigin } from './origin.ts';
import { chapterReader, languageOf, piecesOf } from './read-translations.ts';
import { newSettings, settingsUnits } from './settings-units.ts';

/** What is to be done so that a translation follows its original, a file each; nothing is written. */
export interface TranslationPlan {
  readonly files: readonly PlannedFile[];
  /** `origin.json`, where it changes. */
  readonly origin?: { readonly path: string; readonly text: string; readonly before?: string };
}

export interface PlannedFile {
  /** Relative to the course, with `/`. */
  readonly path: string;
  readonly text: string;
  /** Its text until now; absent for a new file. */
  readonly before?: string;
  readonly added: number;
  readonly changed: number;
  /** What somebody must mend by hand. */
  readonly left: readonly TranslationUnit[];
  /** What waits for its translation in it then. */
  readonly open: { readonly texts: number; readonly words: number };
}

interface Pair {
  readonly path: string;
  readonly original: SourceFile;
  /** The original's text in the letters of the translation. */
  readonly text: string;
  readonly translated: SourceFile | undefined;
  /** Reads one of the two. */
  readonly units: (source: SourceFile) => readonly TranslationUnit[];
  readonly begin: (units: readonly TranslationUnit[]) => string;
}

/** @param tag of the language, BCP 47. */
export function planTranslation(files: CourseFiles, tag: string): TranslationPlan {
  const source = languageOf(files);
  const translation = files.translations?.find((each) => each.tag === tag);
  const folder = translation?.folder ?? `translations/${tag}`;
  const known = new Map(translation?.origin ? readOrigin(translation.origin.text) : []);
  const pairs = pairsOf(files, { tag, folder, source });
  const origin = new Map<string, readonly OriginUnit[]>();
  const planned = pairs.map((pair) => {
    const made = followFile(pair, known.get(pair.path), source);
    if (made.origin) origin.set(pair.path, made.origin);
    return planFile(`${folder}/${pair.path}`, pair, made);
  });
  const path = `${folder}/${originFile}`;
  const before = translation?.origin?.text;
  const text = writeOrigin(origin);
  return {
    files: planned,
    ...(text !== before && {
      origin: { path, text, ...(before !== undefined && { before }) },
    }),
  };
}

function pairsOf(
  files: CourseFiles,
  {
    tag,
    folder,
    source,
  }: { readonly tag: string; readonly folder: string; readonly source: string },
): Pair[] {
  const translation = files.translations?.find((each) => each.tag === tag);
  const translated = new Map(
    (translation ? documentsOf(translation) : []).map((file) => [file.path, file]),
  );
  const read = chapterReader(files, source);
  const pieces = piecesOf(files, translation ?? {});
  const documents = documentsOf(files).map((original): Pair => {
    const { path } = original;
    const text = writeLetters(original, pieces.original, pieces.here);
    return {
      path,
      original,
      text,
      translated: translated.get(`${folder}/${path}`),
      units: (file) => read(file, path, file === original ? pieces.original : pieces.here).units,
      begin: (units) => markWords(text, units, source),
    };
  });
  const { settings } = files;
  if (settings === undefined) return documents;
  return [
    {
      path: settings.path,
      original: settings,
      text: settings.text,
      translated: translation?.settings,
      units: (file) => settingsUnits(file, source),
      begin: () => newSettings(settings, languageTag(source).open),
    },
    ...documents,
  ];
}

type Made = Omit<BroughtUp, 'origin'> & { readonly origin?: readonly OriginUnit[] | undefined };

/** Leaves a file as it is where it cannot be followed without making it worse. */
function followFile(
  { original, text, translated, units, begin }: Pair,
  was: readonly OriginUnit[] | undefined,
  source: string,
): Made {
  const now = units(original);
  const made = now.map(originOf);
  if (translated === undefined) {
    return { text: begin(now), origin: made, added: 0, changed: 0, left: [] };
  }
  const here: DocumentInUnits = { text: translated.text, units: units(translated) };
  const as = { text: here.text, added: 0, changed: 0 };
  const names = { source: '', command: '' };
  const wrongIn = (each: readonly TranslationUnit[]) =>
    compareChapter(now, each, was, names).problems.filter(
      ({ rule }) => rule === 'translation-differs',
    ).length;
  const wrong = wrongIn(here.units);
  if (was === undefined) {
    return wrong === 0 ? { ...as, origin: made, left: [] } : { ...as, left: [] };
  }
  const brought = bringUp({ text, units: now }, here, was, source);
  if (brought.text === here.text) return brought;
  const again = units({ path: translated.path, text: brought.text });
  const keepsWords = wordsAreThere(here.units, again);
  if (keepsWords && wrongIn(again) <= wrong) return brought;
  return { ...as, origin: was, left: now.slice(0, 1) };
}

/** Whether every translated text is still there. */
function wordsAreThere(
  before: readonly TranslationUnit[],
  after: readonly TranslationUnit[],
): boolean {
  const left = new Map<string, number>();
  for (const { words } of textsIn(after)) left.set(words, (left.get(words) ?? 0) + 1);
  return textsIn(before).every(({ words, mark }) => {
    const count = left.get(words) ?? 0;
    left.set(words, count - 1);
    return count > 0 || mark === 'open';
  });
}

function planFile(path: string, pair: Pair, made: Made): PlannedFile {
  const { text, added, changed, left } = made;
  const { translated } = pair;
  const read = pair.units(translated?.text === text ? translated : { path, text });
  const open = textsIn(read).filter(({ mark }) => mark !== undefined);
  const before = pair.translated?.text;
  return {
    ...{ path, text, added, changed, left },
    ...(before !== undefined && { before }),
    open: {
      texts: open.length,
      words: open.reduce((sum, { words }) => sum + countWords(words), 0),
    },
  };
}
