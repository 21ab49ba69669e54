import type { Course } from '../../src/model/index.ts';
import { type CourseFiles, findFiles } from '../../src/read/index.ts';
import { type CurrentCourse, createWorkspace, type Workspace } from '../../src/workspace/index.ts';

/** A course whose files can be changed without a disk. */
export interface CourseInMemory {
  readonly files: CourseFiles;
  readonly course: Course;
  readonly workspace: Workspace;
}

export async function loadInMemory(folder: string): Promise<CourseInMemory> {
  return makeInMemory(await findFiles(folder));
}

export function makeInMemory(files: CourseFiles): CourseInMemory {
  const workspace = createWorkspace();
  return { files, workspace, course: workspace.update(files).course() };
}

/** The course in which one chapter has another text; nothing else is read again. */
export function checkChanged(
  { files, workspace }: CourseInMemory,
  file: string,
  text: string,
): CurrentCourse {
  const chapters = files.chapters.map((known) =>
    known.path === file ? { path: file, text } : known,
  );
  return workspace.update({ ...files, chapters });
}

export function textOf({ files }: CourseInMemory, file: string): string {
  const chapter = files.chapters.find(({ path }) => path === file);
  if (!chapter) throw new RangeError(`no chapter ${file}`);
  return chapter.text;
}
