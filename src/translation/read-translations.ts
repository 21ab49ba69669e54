import { topOf } from '../diagnostics/index.ts';
import {
  type ChapterOptions,
  type ChapterSyntax,
  type CourseFiles,
  type CourseProblem,
  type CourseSettings,
  documentsOf,
  filesBeside,
  readChapter,
  readSettings,
  readTranslationSettings,
  type SourceFile,
  type TranslationFiles,
} from '../read/index.ts';
import type { Names } from './changed-texts.ts';
import { headingsOf, type TranslationUnit, unitsOf } from './chapter-units.ts';
import { type Comparison, compareChapter } from './compare-chapter.ts';
import { type Origin, printOf, readOrigin } from './origin.ts';
import { movedTo } from './places.ts';
import { settingsUnits } from './settings-units.ts';
import { wordsOfSettings } from './words-of-settings.ts';

/** A course in another language, as far as it is there. */
export interface Translation {
  readonly tag: string;
  /** Such as `translations/de`. */
  readonly folder: string;
  readonly files: TranslationFiles;
  /** The chapters and pages that are translated, by the original's files. */
  readonly chapters: ReadonlyMap<string, TranslatedChapter>;
  /** Whether it has anything for readers: a title, and one chapter that is ready. */
  readonly isPublished: boolean;
  readonly problems: readonly CourseProblem[];
}

export interface TranslatedChapter extends Omit<Comparison, 'problems'> {
  readonly source: SourceFile;
  readonly headings: readonly string[];
}

/** A file as it was compared: plain data. */
export interface ComparedFile extends Comparison {
  readonly headings: readonly string[];
}

export interface TranslationOptions extends Pick<ChapterOptions, 'frontMatter'> {
  /** What was kept of a file with the same print, else what `make` gives. */
  readonly recall?:
    | ((file: string, print: string, make: () => ComparedFile) => ComparedFile)
    | undefined;
}

/** A chapter of the original and what became of it in a translation. */
export interface ChapterPair {
  readonly original: ReadUnit;
  readonly translated: ReadUnit;
}

export interface ReadUnit {
  readonly syntax: ChapterSyntax;
  readonly units: readonly TranslationUnit[];
}

/** Reads the translations of a course and holds each chapter against its original. */
export function readTranslations(
  files: CourseFiles,
  { recall = (_file, _print, make) => make(), ...options }: TranslationOptions = {},
): Translation[] {
  const { translations = [] } = files;
  if (translations.length === 0) return [];
  const language = languageOf(files);
  const reader = chapterReader(files, language, options);
  return translations.map((translation) => {
    const { tag } = translation;
    const pieces = piecesOf(files, translation);
    const compare = (original: SourceFile, source: SourceFile, origin: Origin): ComparedFile => {
      const was = origin.get(original.path);
      const print = printOf([tag, language, pieces, original.text, source.text, was ?? null]);
      return recall(source.path, print, () => {
        const pair = {
          original: reader(original),
          translated: reader(source, original.path, pieces.here),
        };
        const compared = compareFile(pair, was, namesOf(tag, language));
        return { ...compared, headings: headingsOf(pair.original.syntax) };
      });
    };
    return readTranslation(files, translation, language, compare);
  });
}

export function languageOf({ settings }: CourseFiles): string {
  return settings ? readSettings(settings).settings.language : 'en';
}

/** The same files with all that is to be told of the translations. */
export function withTranslationProblems(files: CourseFiles): CourseFiles {
  const found = readTranslations(files).flatMap(({ problems }) => problems);
  return found.length === 0 ? files : { ...files, problems: [...files.problems, ...found] };
}

export function filesOfTranslation(files: TranslationFiles): readonly SourceFile[] {
  const { news, settings, origin } = files;
  return [
    ...documentsOf(files),
    ...news,
    ...(settings ? [settings] : []),
    ...(origin ? [origin] : []),
  ];
}

/** What was read of a file that an editor or a preview holds: its units depend on its text and the language alone. */
const knownUnits = new WeakMap<
  SourceFile,
  {
    readonly language: string;
    readonly pieces: CourseSettings['pieces'];
    readonly read: ReadUnit;
  }
>();

/** The letters that moves are written in: the original's, and the translation's, which has the same unless it says so. */
export function piecesOf(files: CourseFiles, { settings }: Pick<TranslationFiles, 'settings'>) {
  const { pieces } = filesBeside(files);
  const said = settings && readTranslationSettings(settings).words.pieces;
  return { original: pieces, here: said ?? pieces };
}

/** Reads chapters as the course does, each once. */
export function chapterReader(
  files: CourseFiles,
  language: string,
  options: Pick<ChapterOptions, 'frontMatter'> = {},
) {
  const beside = filesBeside(files);
  return (source: SourceFile, as = source.path, pieces = beside.pieces): ReadUnit => {
    const found = knownUnits.get(source);
    if (found?.language === language && found.pieces === pieces) return found.read;
    const syntax = readChapter({ ...source, path: as }, { ...options, ...beside, pieces });
    const made = { syntax, units: unitsOf(syntax, source.text, language) };
    knownUnits.set(source, { language, pieces, read: made });
    return made;
  };
}

function readTranslation(
  files: CourseFiles,
  translation: TranslationFiles,
  language: string,
  compare: (original: SourceFile, source: SourceFile, origin: Origin) => ComparedFile,
): Translation {
  const { tag, folder, settings } = translation;
  const names = namesOf(tag, language);
  const origin = originIn(translation);
  const problems: CourseProblem[] = [...origin.problems];
  if (tag.toLowerCase() === language.toLowerCase()) {
    problems.push({
      rule: 'translation-differs',
      place: topOf(folder),
      message: `The course itself is in ${names.source}, so it needs no translation into it.`,
      hint: `Name the folder by another language, or set \`language\` in course.yaml to that of chapters/.`,
    });
  }
  const documents = documentsOf(files);
  const originals = new Map(documents.map((document) => [document.path, document]));
  const chapters = new Map<string, TranslatedChapter>();
  for (const source of documentsOf(translation)) {
    const path = source.path.slice(folder.length + 1);
    const original = originals.get(path);
    if (original === undefined) {
      problems.push(noOriginal(source.path, path));
      continue;
    }
    const compared = compare(original, source, origin.of);
    const moved = (problem: CourseProblem): CourseProblem => ({
      ...problem,
      place: movedTo(folder, problem.place),
    });
    problems.push(...compared.problems.map(moved));
    const { open, isReady, headings } = compared;
    chapters.set(path, { source, open, isReady, headings });
  }
  if (settings && files.settings) {
    problems.push(...readTranslationSettings(settings).problems);
    const both = [files.settings, settings].map((file) => settingsUnits(file, language));
    const compared = compareChapter(
      both[0] ?? [],
      both[1] ?? [],
      origin.of.get('course.yaml') ?? [],
      names,
    );
    problems.push(...compared.problems);
  }
  const isTitled = wordsOfSettings(translation, language).title !== undefined;
  const isPublished =
    isTitled && files.chapters.some(({ path }) => chapters.get(path)?.isReady ?? false);
  const missing = documents.filter(({ path }) => !chapters.has(path));
  problems.push(...missingProblems(translation, missing, documents.length, names));
  if (settings && !isPublished) {
    problems.push({
      rule: 'translation-open',
      place: topOf(settings.path),
      message: `Nothing of this translation is published yet: ${isTitled ? 'no chapter of it is ready' : 'its title is not translated'}.`,
      hint: 'A language is published once its title and one chapter are translated, with no mark left.',
    });
  }
  return { tag, folder, files: translation, chapters, isPublished, problems };
}

/** Compares a chapter, with what only its whole front matter says. */
function compareFile(
  { original, translated }: ChapterPair,
  origin: Parameters<typeof compareChapter>[2],
  names: Names,
): Comparison {
  const compared = compareChapter(original.units, translated.units, origin, names);
  const problems = [...compared.problems];
  const { id, file } = original.syntax;
  if (translated.syntax.id !== id) {
    problems.push({
      rule: 'translation-differs',
      place: topOf(file),
      message: `The original is published as \`${id}\`, and this would be as \`${translated.syntax.id}\`.`,
      hint: 'Give it the `id` that the original has, or none where that has none: readers change the language by it.',
      related: [{ place: topOf(file), message: 'the original' }],
    });
  }
  const isDraft = original.syntax.draft === true || translated.syntax.draft === true;
  const isReady =
    compared.isReady && !isDraft && problems.every(({ rule }) => rule !== 'translation-differs');
  return { ...compared, problems, isReady };
}

function originIn({ origin, tag }: TranslationFiles): {
  readonly of: Origin;
  readonly problems: readonly CourseProblem[];
} {
  const none: Origin = new Map();
  if (origin === undefined) return { of: none, problems: [] };
  const read = readOrigin(origin.text);
  if (read) return { of: read, problems: [] };
  return {
    of: none,
    problems: [
      {
        rule: 'translation-differs',
        place: topOf(origin.path),
        message: 'This is not what `linewright translate` writes, so it is not read.',
        hint: `Delete it, or take it from an earlier edition; \`linewright translate ${tag} --write\` makes it anew.`,
      },
    ],
  };
}

function noOriginal(file: string, path: string): CourseProblem {
  return {
    rule: 'translation-differs',
    place: topOf(file),
    message: `This has no original: there is no ${path}.`,
    hint: 'Name it as the original is named, or delete it if that is gone.',
  };
}

function missingProblems(
  { folder, settings }: TranslationFiles,
  missing: readonly SourceFile[],
  all: number,
  { source, command }: Names,
): CourseProblem[] {
  const file = `${folder}/course.yaml`;
  const problems: CourseProblem[] = [];
  if (settings === undefined) {
    problems.push({
      rule: 'translation-open',
      place: topOf(file),
      message: 'The translation has no course.yaml with a title, so it is not published.',
      hint: `\`${command} --write\` makes it.`,
    });
  }
  if (missing.length > 0) {
    const list = missing.slice(0, 3).map(({ path }) => path);
    problems.push({
      rule: 'translation-open',
      place: topOf(file),
      message: `Of ${all} chapters and pages ${missing.length} ${missing.length === 1 ? 'has' : 'have'} no translation: ${list.join(', ')}${missing.length > 3 ? ' …' : ''}.`,
      hint: `Readers get them in ${source}. \`${command} --write\` makes their files, moves in place.`,
    });
  }
  return problems;
}

function namesOf(tag: string, language: string): Names {
  return { source: languageName(language), command: `linewright translate ${tag}` };
}

/** The English name of a language. */
export function languageName(tag: string): string {
  return new Intl.DisplayNames(['en'], { type: 'language' }).of(tag) ?? tag;
}
