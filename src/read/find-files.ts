import { readdir, readFile, stat } from 'node:fs/promises';
import path from 'node:path';
import { createLocator } from '../diagnostics/index.ts';
import { topOf } from './read-chapter.ts';
import type { CourseFiles, CourseProblem, SourceFile } from './types.ts';

/** A folder that cannot be a course, or cannot be read; `message` says what to do. */
export class NoCourseError extends Error {}

/** The largest chapter, in bytes: about five times the longest chapter of a printed book. */
export const chapterLimit = 1_000_000;

/**
 * Finds the files of a course. A folder without `course.yaml` and `chapters/` is no course;
 * a file that cannot be read is a problem, and the others are read all the same.
 */
export async function findFiles(folder: string): Promise<CourseFiles> {
  const entries = await readdir(folder).catch((error: NodeJS.ErrnoException) => {
    const why =
      error.code === 'ENOENT'
        ? 'does not exist'
        : error.code === 'ENOTDIR'
          ? 'is not a folder'
          : `cannot be read (${error.code})`;
    throw new NoCourseError(`The folder ${folder} ${why}.`);
  });
  if (!entries.includes('course.yaml')) {
    const hint = entries.includes('course.yml')
      ? 'Its settings are in course.yml: rename that file to course.yaml.'
      : 'A course is a folder with course.yaml and a folder chapters/. `linewright new DIR` makes one.';
    throw new NoCourseError(`The folder ${folder} is no course: it has no course.yaml. ${hint}`);
  }
  const problems: CourseProblem[] = [];
  const settings = await readText(folder, 'course.yaml', 'course-setting', problems);
  const names = entries.includes('chapters')
    ? (await readdir(path.join(folder, 'chapters'))).filter((name) => name.endsWith('.md')).sort()
    : [];
  if (names.length === 0) {
    problems.push({
      rule: 'course-setting',
      place: topOf('course.yaml'),
      message: 'The course has no chapters.',
      hint: 'Write each chapter as a Markdown file in the folder chapters/, such as chapters/01-main-line.md.',
    });
  }
  const chapters = await Promise.all(
    names.map((name) => readText(folder, `chapters/${name}`, 'chapter-unreadable', problems)),
  );
  const games = entries.includes('games')
    ? (await readdir(path.join(folder, 'games'))).filter((name) => name.endsWith('.pgn')).sort()
    : [];
  const gameFiles = await Promise.all(
    games.map((name) =>
      readText(folder, `games/${name}`, 'chapter-unreadable', problems, 'latin-1'),
    ),
  );
  return {
    ...(settings ? { settings } : {}),
    games: gameFiles.filter((game) => game !== undefined),
    chapters: chapters.filter((chapter) => chapter !== undefined),
    media: await listMedia(folder),
    problems,
  };
}

async function readText(
  folder: string,
  file: string,
  rule: CourseProblem['rule'],
  problems: CourseProblem[],
  otherwise?: 'latin-1',
): Promise<SourceFile | undefined> {
  const full = path.join(folder, file);
  const size = (await stat(full)).size;
  if (size > chapterLimit) {
    const megabytes = (bytes: number) => (bytes / 1_000_000).toFixed(1);
    problems.push({
      rule,
      place: topOf(file),
      message: `This file has ${megabytes(size)} MB; a chapter may have ${megabytes(chapterLimit)} MB.`,
      hint: 'Divide it into several chapters; pictures and whole games belong in media/ and games/.',
    });
    return undefined;
  }
  const bytes = await readFile(full);
  const decoded = decodeUtf8(bytes);
  if (typeof decoded === 'string') return { path: file, text: decoded };
  // PGN files are ISO 8859-1 by the standard (section 4.1); most are UTF-8 today.
  if (otherwise) return { path: file, text: new TextDecoder(otherwise).decode(bytes) };
  const before = new TextDecoder()
    .decode(bytes.subarray(0, decoded.badByte))
    .replace(/^\uFEFF/, '');
  const start = createLocator(before)(before.length);
  problems.push({
    rule,
    place: { file, start, end: start },
    message: 'This file is not UTF-8 text from here on.',
    hint: 'Save it as UTF-8 in your editor (it is probably Latin-1, Windows-1252 or UTF-16).',
  });
  return undefined;
}

/** The text without its byte order mark, or the offset of the first byte that is not UTF-8. */
function decodeUtf8(bytes: Uint8Array): string | { badByte: number } {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  try {
    return decoder.decode(bytes);
  } catch {
    // The longest prefix that decodes, found by halving: TextDecoder does not tell the offset.
    let good = 0;
    let bad = bytes.length;
    while (bad - good > 1) {
      const middle = (good + bad) >> 1;
      try {
        new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(0, middle), {
          stream: true,
        });
        good = middle;
      } catch {
        bad = middle;
      }
    }
    return { badByte: good };
  }
}

async function listMedia(folder: string): Promise<string[]> {
  const root = path.join(folder, 'media');
  const entries = await readdir(root, { recursive: true, withFileTypes: true }).catch(
    (error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return [];
      throw error;
    },
  );
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)))
    .map((file) => file.split(path.sep).join('/'))
    .sort();
}
