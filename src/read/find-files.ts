import { readdir } from 'node:fs/promises';
import path from 'node:path';
import { topOf } from './read-chapter.ts';
import { describeFailure, readTextFile } from './read-text-file.ts';
import type { CourseFiles, CourseProblem, SourceFile } from './types.ts';

/** A folder that cannot be a course, or cannot be read; `message` says what to do. */
export class NoCourseError extends Error {}

/**
 * Finds the files of a course. A folder without `course.yaml` is no course; a file that cannot be
 * read is a problem, and the others are read all the same.
 */
export async function findFiles(folder: string): Promise<CourseFiles> {
  const entries = await readdir(folder).catch((error: NodeJS.ErrnoException) => {
    throw new NoCourseError(whyNoFolder(folder, error.code));
  });
  if (!entries.includes('course.yaml')) {
    const other = entries.find((name) => /^course\.ya?ml$/i.test(name));
    const hint = other
      ? `Its settings are in ${other}: rename that file to course.yaml.`
      : 'A course is a folder with course.yaml and a folder chapters/. `linewright new DIR` makes one.';
    throw new NoCourseError(`The folder ${folder} is no course: it has no course.yaml. ${hint}`);
  }
  const problems: CourseProblem[] = [];
  const readAll = (names: readonly string[], rule: CourseProblem['rule']) =>
    Promise.all(
      names.map((name) =>
        readTextFile(folder, name, (problem) => problems.push({ rule, ...problem })),
      ),
    );
  const list = async (name: string, extension: string) =>
    entries.includes(name) ? listFolder(folder, name, extension, problems) : [];
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
  const isFile = (file: SourceFile | undefined) => file !== undefined;
  return {
    ...(settings ? { settings } : {}),
    games: games.filter(isFile),
    chapters: chapters.filter(isFile),
    news: news.filter(isFile),
    media: entries.includes('media') ? await listMedia(folder, problems) : [],
    problems,
  };
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

/** The files of a folder that are read, in order; files that were meant to be are a problem. */
async function listFolder(
  course: string,
  folder: string,
  extension: string,
  problems: CourseProblem[],
): Promise<string[]> {
  const report = (file: string, message: string, hint: string) =>
    problems.push({ rule: 'chapter-unreadable', place: topOf(file), message, hint });
  const names: string[] = [];
  const inside = (name: string) => readdir(path.join(course, folder, name));
  try {
    const entries = await readdir(path.join(course, folder), { withFileTypes: true });
    for (const entry of entries) {
      const { name } = entry;
      const file = `${folder}/${name}`;
      // Editors and systems keep files of their own here, such as `._1.md` and `.#1.md`.
      if (name.startsWith('.')) continue;
      if (entry.isDirectory()) {
        if (!(await inside(name)).some((inner) => inner.endsWith(extension))) continue;
        report(
          file,
          `The ${extension} files in this folder are not read.`,
          `Move them up into ${folder}/, or out of it if they are not part of the course.`,
        );
      } else if (name.endsWith(extension)) names.push(file);
      else if (meant[extension]?.test(name)) {
        report(
          file,
          `This file is not read: its name does not end with ${extension}.`,
          `Rename it to ${name.replace(/\.[^.]*$/, extension)}.`,
        );
      }
    }
  } catch (error) {
    problems.push({ rule: 'chapter-unreadable', place: topOf(folder), ...describeFailure(error) });
  }
  return names.sort();
}

const meant: Readonly<Record<string, RegExp>> = {
  '.md': /\.(?:md|markdown|mdown|mkd)$/i,
  '.pgn': /\.pgn$/i,
};

/** Everything in `media/` but links, which may lead out of the course. */
async function listMedia(folder: string, problems: CourseProblem[]): Promise<string[]> {
  const root = path.join(folder, 'media');
  try {
    const entries = await readdir(root, { recursive: true, withFileTypes: true });
    return entries
      .filter((entry) => entry.isFile())
      .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)))
      .map((file) => file.split(path.sep).join('/'))
      .sort();
  } catch (error) {
    problems.push({ rule: 'chapter-unreadable', place: topOf('media'), ...describeFailure(error) });
    return [];
  }
}
