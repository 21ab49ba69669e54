import { type CheckResult, checkCourse } from '../../src/check/index.ts';
import { buildCourse, type Course } from '../../src/model/index.ts';
import { type CourseFiles, findFiles, readCourse } from '../../src/read/index.ts';

/** A course whose files can be changed without a disk. */
export interface CourseInMemory {
  readonly files: CourseFiles;
  readonly course: Course;
}

export async function loadInMemory(folder: string): Promise<CourseInMemory> {
  return makeInMemory(await findFiles(folder));
}

export function makeInMemory(files: CourseFiles): CourseInMemory {
  return { files, course: buildCourse(readCourse(files)) };
}

/** The findings of a course in which one chapter has another text. */
export function checkChanged({ files }: CourseInMemory, file: string, text: string): CheckResult {
  const chapters = files.chapters.map((chapter) =>
    chapter.path === file ? { path: file, text } : chapter,
  );
  return checkCourse(buildCourse(readCourse({ ...files, chapters })));
}

export function textOf({ files }: CourseInMemory, file: string): string {
  const chapter = files.chapters.find(({ path }) => path === file);
  if (!chapter) throw new RangeError(`no chapter ${file}`);
  return chapter.text;
}
