import { type CheckResult, checkCourse } from '../check/index.ts';
import { buildCourse, type Course } from '../model/index.ts';
import { type FindOptions, findFiles, readCourse, type SourceFile } from '../read/index.ts';

export interface LoadedCourse extends CheckResult {
  readonly course: Course;
  /** The text of a file of the course by its path. */
  readonly textOf: (file: string) => string | undefined;
}

/**
 * Reads, builds and checks the course in a folder: the one pipeline of all commands.
 * @throws NoCourseError where the folder is no course.
 */
export async function loadCourse(folder: string, options?: FindOptions): Promise<LoadedCourse> {
  const files = await findFiles(folder, options);
  const texts = new Map<string, SourceFile>();
  for (const file of [
    ...files.chapters,
    ...files.games,
    ...(files.news ?? []),
    ...(files.settings ? [files.settings] : []),
  ]) {
    texts.set(file.path, file);
  }
  const course = buildCourse(readCourse(files));
  return { ...checkCourse(course), course, textOf: (file) => texts.get(file)?.text };
}
