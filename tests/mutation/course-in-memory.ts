import { checkCourse } from '../../src/check/index.ts';
import { buildCourse, type Course } from '../../src/model/index.ts';
import {
  type CourseFiles,
  type CourseSyntax,
  findFiles,
  readCourse,
} from '../../src/read/index.ts';
import { readChapter } from '../../src/read/read-chapter.ts';

/** A course whose files can be changed without a disk. */
export interface CourseInMemory {
  readonly files: CourseFiles;
  readonly draft: CourseSyntax;
  readonly course: Course;
}

export async function loadInMemory(folder: string): Promise<CourseInMemory> {
  return makeInMemory(await findFiles(folder));
}

export function makeInMemory(files: CourseFiles): CourseInMemory {
  const draft = readCourse(files);
  return { files, draft, course: buildCourse(draft) };
}

/**
 * The findings of a course in which one chapter has another text below its front matter. The other
 * chapters, which are read without regard to it, are not read again.
 */
export function checkChanged({ files, draft }: CourseInMemory, file: string, text: string) {
  const options = {
    media: new Set(files.media),
    chapters: new Set(files.chapters.map(({ path }) => path)),
    games: files.games,
  };
  const chapters = draft.chapters.map((chapter) =>
    chapter.file === file ? readChapter({ path: file, text }, options) : chapter,
  );
  return checkCourse(buildCourse({ ...draft, chapters }));
}

export function textOf({ files }: CourseInMemory, file: string): string {
  const chapter = files.chapters.find(({ path }) => path === file);
  if (!chapter) throw new RangeError(`no chapter ${file}`);
  return chapter.text;
}
