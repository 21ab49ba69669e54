import { type CheckResult, checkCourse } from '../../../src/check/index.ts';
import { buildCourse, type Course } from '../../../src/model/index.ts';
import { type CourseFiles, readCourse } from '../../../src/read/index.ts';
import type { Files } from '../case.ts';

/** A course taken through the stages, and how to take other texts through them. */
export interface CourseRun extends CheckResult {
  readonly files: Files;
  readonly course: Course;
}

/** The files as `findFiles` gives them: by folder, in the order of their names. */
export function courseFiles(files: Files): CourseFiles {
  const sources = Object.keys(files)
    .sort()
    .map((path) => ({ path, text: files[path] ?? '' }));
  const inFolder = (folder: string, ending: string) =>
    sources.filter(({ path }) => path.startsWith(folder) && path.endsWith(ending));
  const settings = sources.find(({ path }) => path === 'course.yaml');
  return {
    ...(settings ? { settings } : {}),
    chapters: inFolder('chapters/', '.md'),
    games: inFolder('games/', '.pgn'),
    media: inFolder('media/', '').map(({ path }) => path),
    news: inFolder('news/', '.md'),
    problems: [],
  };
}

export function runCourse(files: Files): CourseRun {
  const course = buildCourse(readCourse(courseFiles(files)));
  return { files, course, ...checkCourse(course) };
}
