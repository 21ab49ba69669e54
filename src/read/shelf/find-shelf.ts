import { readdir, realpath } from 'node:fs/promises';
import path from 'node:path';
import { nearestName } from '../../diagnostics/index.ts';
import { NoCourseError } from '../files/find-files.ts';
import { readTextFile } from '../files/read-text-file.ts';
import type { CourseProblem, SourceFile } from '../types.ts';
import { type FolderSeen, placeCourses, type ShelvedFolder } from './place-courses.ts';
import {
  namelessShelf,
  readShelfSettings,
  type ShelfSettings,
  shelfFile,
} from './read-shelf-settings.ts';

/** A shelf as it stands on the disk. */
export interface ShelfFiles {
  readonly file?: SourceFile;
  readonly settings: ShelfSettings;
  /** Whether title and courses could be read. */
  readonly isWhole: boolean;
  /** The folders that are courses, in the order of `courses`. */
  readonly courses: readonly ShelvedFolder[];
  readonly problems: readonly CourseProblem[];
}

/** Whether a folder is a shelf: it has a `shelf.yaml`. */
export async function isShelf(folder: string): Promise<boolean> {
  const entries = await readdir(folder).catch((): string[] => []);
  return entries.includes(shelfFile);
}

/**
 * Reads `shelf.yaml` and looks into the folders that it names; of a course it reads only the settings.
 * @throws NoCourseError where the folder is also a course.
 */
export async function findShelf(folder: string): Promise<ShelfFiles> {
  if ((await readdir(folder)).includes('course.yaml')) {
    throw new NoCourseError(
      `The folder ${folder} has both course.yaml and ${shelfFile}, so it is neither. Move the course into a folder of its own below the shelf, and name that under \`courses\`.`,
    );
  }
  const problems: CourseProblem[] = [];
  const file = await readTextFile(folder, shelfFile, (problem) =>
    problems.push({ rule: 'shelf-setting', ...problem }),
  );
  if (file === undefined) {
    return { settings: namelessShelf, isWhole: false, courses: [], problems };
  }
  const draft = readShelfSettings(file);
  const real = await realpath(folder);
  const seen: FolderSeen[] = [];
  for (const { written } of draft.folders) seen.push(await lookAt(folder, real, written));
  const placed = placeCourses(draft.folders, seen);
  return {
    file,
    settings: draft.settings,
    isWhole: draft.isWhole,
    courses: placed.courses,
    problems: [...draft.problems, ...placed.problems],
  };
}

async function lookAt(folder: string, root: string, written: string): Promise<FolderSeen> {
  const asPosix = written.replaceAll('\\', '/');
  const inside = path.posix.normalize(asPosix).replace(/\/+$/, '').replace(/^\.$/, '');
  const isOutside = path.posix.isAbsolute(asPosix) || /^[a-z]:/i.test(asPosix);
  if (isOutside || /^\.\.(?:\/|$)/.test(inside)) {
    return { path: inside, kind: 'outside', real: inside };
  }
  const full = path.join(folder, inside);
  const real = await realpath(full).catch(() => undefined);
  if (real === undefined) {
    return { path: inside, kind: 'missing', real: inside, near: await nearCourse(folder, inside) };
  }
  const found = { path: inside, real: path.relative(root, real).replaceAll(path.sep, '/') };
  const entries = await readdir(full).catch((error: NodeJS.ErrnoException) => error.code);
  if (!Array.isArray(entries)) {
    return { ...found, kind: entries === 'ENOTDIR' ? 'file' : 'unreadable' };
  }
  if (!entries.includes('course.yaml')) {
    return { ...found, kind: entries.includes(shelfFile) ? 'shelf' : 'folder' };
  }
  const settings = await readTextFile(full, 'course.yaml', () => {});
  return { ...found, kind: 'course', ...(settings && { settings }) };
}

/** The folder that a missing one is probably a misspelling of. */
async function nearCourse(folder: string, inside: string): Promise<string | undefined> {
  const parent = path.posix.dirname(inside);
  const entries = await readdir(path.join(folder, parent), { withFileTypes: true }).catch(() => []);
  const names = entries.filter((entry) => entry.isDirectory()).map(({ name }) => name);
  const near = nearestName(path.posix.basename(inside), names);
  return near === undefined ? undefined : path.posix.join(parent, near);
}
