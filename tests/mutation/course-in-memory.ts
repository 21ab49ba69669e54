import type { Course } from '../../src/model/index.ts';
import { type CourseFiles, findFiles } from '../../src/read/index.ts';
import {
  type CurrentCourse,
  createWorkspace,
  type KeptChapter,
} from '../../src/workspace/index.ts';

/** A course whose files can be changed without a disk. */
export interface CourseInMemory {
  readonly files: CourseFiles;
  readonly course: Course;
  /** What was found in it, and the course for those who publish it. */
  readonly now: CurrentCourse;
  /** What need not be read, played and checked again for another edition of it. */
  readonly kept: () => readonly KeptChapter[];
}

export async function loadInMemory(folder: string): Promise<CourseInMemory> {
  return makeInMemory(await findFiles(folder));
}

/** @param before an edition of the course: what the two have in common is made once. */
export function makeInMemory(files: CourseFiles, before?: CourseInMemory): CourseInMemory {
  const workspace = createWorkspace({ kept: before?.kept() });
  const now = workspace.update(files);
  let kept: readonly KeptChapter[] | undefined;
  return {
    files,
    now,
    course: now.course(),
    kept() {
      kept ??= [...workspace.kept()];
      return kept;
    },
  };
}

/** The course in which one chapter has another text, made of the sound one each time. */
export function checkChanged(
  { files, kept }: CourseInMemory,
  file: string,
  text: string,
): CurrentCourse {
  const chapters = files.chapters.map((known) =>
    known.path === file ? { path: file, text } : known,
  );
  return createWorkspace({ kept: kept() }).update({ ...files, chapters });
}

export function textOf({ files }: CourseInMemory, file: string): string {
  const chapter = files.chapters.find(({ path }) => path === file);
  if (!chapter) throw new RangeError(`no chapter ${file}`);
  return chapter.text;
}
