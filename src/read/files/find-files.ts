import { readdir } from 'node:fs/promises';
import { compareNames, topOf, UserError } from '../../diagnostics/index.ts';
import {
  FileRefusedError,
  type ListedFile,
  listFolder,
  type Refusal,
  refusals,
} from '../../files/index.ts';
import {
  findMediaFault,
  type MediaFault,
  type PictureShape,
  readPictureShape,
} from '../../media/index.ts';
import type { CourseFiles, CourseProblem, SourceFile } from '../types.ts';
import { findTranslations } from './find-translations.ts';
import { readTextFile } from './read-text-file.ts';

/** The course's own look. */
export const themeFile = 'theme.css';

/** The engine's results for the positions of a course. */
export const engineFile = 'facts/engine.tsv';

/** A folder that is no course, or cannot be read. The message says what to do. */
export class NoCourseError extends UserError {
  constructor(message: string) {
    super(message, '');
  }

  override get told(): string {
    return this.message;
  }
}

export interface FindOptions {
  /** Whether to look into the files of `media/`; default: yes. */
  readonly lookIntoMedia?: boolean;
  /** Whether to look for the author's own code in `rules/`; default: no. */
  readonly lookForCode?: boolean;
}

/**
 * Finds the files of a course. A file that cannot be read becomes a problem, and the others are read all the same.
 * @throws NoCourseError for a folder without `course.yaml`.
 */
export async function findFiles(
  folder: string,
  { lookIntoMedia = true, lookForCode = false }: FindOptions = {},
): Promise<CourseFiles> {
  const entries = await entriesOf(folder);
  const problems: CourseProblem[] = [];
  const readAll = (names: readonly string[], rule: CourseProblem['rule']) =>
    readInBatches(folder, names, (problem) => problems.push({ rule, ...problem }));
  const reportAs =
    (rule: CourseProblem['rule']): Report =>
    (file, { message, hint }) =>
      problems.push({ rule, place: topOf(file), message, hint });
  const report = reportAs('chapter-unreadable');
  const list = async (name: string, extension: string, tell = report) =>
    entries.includes(name) ? listTexts(folder, name, extension, tell) : [];
  const [settings] = await readAll(['course.yaml'], 'course-setting');
  const before = problems.length;
  const names = await list('chapters', '.md');
  if (names.length === 0 && problems.length === before) {
    problems.push({
      rule: 'course-setting',
      place: topOf('course.yaml'),
      message: 'The course has no chapters.',
      hint: 'Write each chapter as a Markdown file in the folder chapters/, such as chapters/01-main-line.md.',
    });
  }
  const chapters = await readAll(names, 'chapter-unreadable');
  const games = await readAll(await list('games', '.pgn'), 'chapter-unreadable');
  const news = await readAll(await list('news', '.md'), 'chapter-unreadable');
  const pages = await readAll(await list('pages', '.md'), 'chapter-unreadable');
  const results = (await list('facts', '.tsv', reportAs('facts-unreadable'))).filter(
    (name) => name === engineFile,
  );
  const facts = await readAll(results, 'facts-unreadable');
  const code = lookForCode ? await list('rules', '.mjs', reportAs('own-rule')) : [];
  const rules = await readAll(code, 'own-rule');
  const [theme] = await readAll(entries.includes(themeFile) ? [themeFile] : [], 'theme-unreadable');
  const media = entries.includes('media') ? (await listMedia(folder, 'media', report)).sort() : [];
  const translations = entries.includes('translations')
    ? await findTranslations(folder, {
        report: reportAs('translation-differs'),
        list: (name) => listTexts(folder, name, '.md', reportAs('translation-differs')),
        read: (names) => readAll(names, 'translation-differs'),
      })
    : [];
  const isFile = (file: SourceFile | undefined) => file !== undefined;
  return {
    ...(settings ? { settings } : {}),
    ...(theme ? { theme } : {}),
    games: games.filter(isFile),
    chapters: chapters.filter(isFile),
    news: news.filter(isFile),
    pages: pages.filter(isFile),
    facts: facts.filter(isFile),
    ...(lookForCode && { rules: rules.filter(isFile) }),
    media,
    ...(translations.length > 0 && { translations }),
    ...(lookIntoMedia && (await lookInto(folder, media, settings))),
    problems,
  };
}

/** The names in a course folder. @throws NoCourseError where it is none. */
async function entriesOf(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder).catch((error: NodeJS.ErrnoException) => {
    throw new NoCourseError(whyNoFolder(folder, error.code));
  });
  if (!entries.includes('course.yaml')) {
    const other = entries.find((name) => /^course\.ya?ml$/i.test(name));
    const isShelf = entries.includes('shelf.yaml');
    const hint = isShelf
      ? 'It is a shelf of several courses: name the folder of one of them.'
      : other
        ? `Its settings are in ${other}: rename that file to course.yaml.`
        : 'A course is a folder with course.yaml and a folder chapters/. `linewright new DIR` makes one.';
    throw new NoCourseError(`The folder ${folder} is no course: it has no course.yaml. ${hint}`);
  }
  return entries;
}

function whyNoFolder(folder: string, code: string | undefined): string {
  switch (code) {
    case 'ENOENT':
      return `The folder ${folder} does not exist. Name the folder of a course; \`linewright new ${folder}\` makes one.`;
    case 'ENOTDIR':
      return `${folder} is a file, not a folder. Name the folder that holds course.yaml.`;
    default:
      return `The folder ${folder} cannot be read: the system says ${code}.`;
  }
}

/** In batches, since a process may have only so many files open. */
async function readInBatches(
  folder: string,
  names: readonly string[],
  report: Parameters<typeof readTextFile>[2],
): Promise<(SourceFile | undefined)[]> {
  const files: (SourceFile | undefined)[] = [];
  for (let at = 0; at < names.length; at += 64) {
    const some = names.slice(at, at + 64).map((name) => readTextFile(folder, name, report));
    files.push(...(await Promise.all(some)));
  }
  return files;
}

type Report = (file: string, refusal: Refusal) => void;

/** The entries of a folder. One that cannot be listed becomes a problem. */
async function listing(course: string, folder: string, report: Report): Promise<ListedFile[]> {
  try {
    return await listFolder(course, folder);
  } catch (error) {
    if (!(error instanceof FileRefusedError)) throw error;
    report(folder, error);
    return [];
  }
}

/**
 * The text files of a folder, in order. Files that look as if they were meant to be read, but are not, become
 * problems.
 */
async function listTexts(
  course: string,
  folder: string,
  extension: string,
  report: Report,
): Promise<string[]> {
  const names: string[] = [];
  for (const { name, isFolder, refusal } of await listing(course, folder, report)) {
    const file = `${folder}/${name}`;
    // Editors and file systems leave such files, as `._1.md` and `.#1.md`.
    if (name.startsWith('.')) continue;
    if (isFolder) {
      const inner = await listing(course, file, report);
      if (name.endsWith(extension)) report(file, refusals.folder);
      else if (inner.some((each) => each.name.endsWith(extension))) {
        report(file, {
          message: `The ${extension} files in this folder are not read.`,
          hint: `Move them up into ${folder}/, or out of it if they are not part of the course.`,
        });
      }
    } else if (refusal) report(file, refusal);
    else if (name.endsWith(extension)) names.push(file);
    else if (meant.get(extension)?.test(name)) {
      report(file, {
        message: `This file is not read: its name does not end with ${extension}.`,
        hint: `Rename it to ${name.replace(/\.[^.]*$/, extension)}.`,
      });
    }
  }
  return names.sort(compareNames);
}

const meant: ReadonlyMap<string, RegExp> = new Map([
  ['.md', /\.(?:md|markdown|mdown|mkd)$/i],
  ['.pgn', /\.pgn$/i],
]);

/** Everything in `media/`, at any depth. */
async function listMedia(course: string, folder: string, report: Report): Promise<string[]> {
  const files: string[] = [];
  for (const { name, isFolder, refusal } of await listing(course, folder, report)) {
    const file = `${folder}/${name}`;
    if (isFolder) files.push(...(await listMedia(course, file, report)));
    else if (refusal === undefined) files.push(file);
    // Editors lock a file with a link beside it, such as `.#board.svg`.
    else if (!name.startsWith('.')) report(file, refusal);
  }
  return files;
}

/** Looks into the files of `media/`: which may not be published, and what shape the course's own pictures have. */
async function lookInto(folder: string, media: readonly string[], settings?: SourceFile) {
  const unfit = await findUnfit(folder, media);
  const pictures = new Map<string, PictureShape>();
  for (const file of media) {
    if (!isPicture.test(file) || unfit.has(file) || !settings?.text.includes(file)) continue;
    pictures.set(file, await readPictureShape(folder, file));
  }
  return { unfit, pictures };
}

const isPicture = /\.(?:svg|png|webp|avif|jpe?g|gif)$/i;

async function findUnfit(
  folder: string,
  media: readonly string[],
): Promise<ReadonlyMap<string, MediaFault>> {
  const unfit = new Map<string, MediaFault>();
  const files = media.values();
  const look = async () => {
    for (const file of files) {
      const fault = await findMediaFault(folder, file);
      if (fault) unfit.set(file, fault);
    }
  };
  // Four at a time: a process may have only so many files open.
  await Promise.all([look(), look(), look(), look()]);
  return unfit;
}
