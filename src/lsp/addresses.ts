import { existsSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

/** The path of a client's address; undefined for one of no file. */
export function pathOf(uri: string): string | undefined {
  try {
    return fileURLToPath(uri);
  } catch {
    return undefined;
  }
}

export function uriOf(file: string): string {
  return pathToFileURL(file).href;
}

/** The nearest folder above a file that is a course. */
export function courseFolderOf(file: string): string | undefined {
  for (let folder = path.dirname(file); ; folder = path.dirname(folder)) {
    if (existsSync(path.join(folder, 'course.yaml')) && !isTranslation(folder)) return folder;
    if (folder === path.dirname(folder)) return undefined;
  }
}

/** A translation has settings of its own, and belongs to the course around it. */
export function isTranslation(folder: string): boolean {
  const parent = path.dirname(folder);
  const around = path.join(path.dirname(parent), 'course.yaml');
  return path.basename(parent) === 'translations' && existsSync(around);
}

/** The path of a file in a course, with `/`. */
export function pathInCourse(folder: string, file: string): string {
  return path.relative(folder, file).split(path.sep).join('/');
}
