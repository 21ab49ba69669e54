import path from 'node:path';
import type { CheckResult } from '../check/index.ts';
import type { Course } from '../model/index.ts';
import { type FindOptions, findFiles, type SourceFile } from '../read/index.ts';
import {
  type CurrentCourse,
  createWorkspace,
  loadKept,
  saveKept,
  type Workspace,
} from '../workspace/index.ts';
import { cacheFolder } from './cache-folder.ts';

export interface LoadedCourse extends CheckResult {
  readonly course: Course;
  /** The text of a file of the course by its path. */
  readonly textOf: (file: string) => string | undefined;
}

export interface OpenOptions extends FindOptions {
  /** What the course is kept by, where that is not its folder. */
  readonly as?: string;
}

/**
 * Reads, builds and checks the course in a folder: the one pipeline of all commands.
 * @throws NoCourseError where the folder is no course.
 */
export async function loadCourse(folder: string, options?: OpenOptions): Promise<LoadedCourse> {
  return loadedFrom(await openCourse(folder, options));
}

/** What was opened, with its whole model. */
export function loadedFrom({
  current,
  textOf,
}: Awaited<ReturnType<typeof readCurrent>>): LoadedCourse {
  const checked = current.checked();
  return {
    diagnostics: current.diagnostics,
    ...(checked && { checked }),
    course: current.course(),
    textOf,
  };
}

/**
 * The course in a folder with what an earlier process kept of it, which is kept again for the next.
 * @throws NoCourseError where the folder is no course.
 */
export async function openCourse(folder: string, { as, ...options }: OpenOptions = {}) {
  const cache = cacheFolder();
  const name = as ?? path.resolve(folder);
  const workspace = createWorkspace({ kept: await loadKept(cache, name) });
  const opened = await readCurrent(folder, workspace, options);
  const { read, checked } = opened.current.work;
  if (read.length + checked.length > 0) await saveKept(cache, name, workspace.kept());
  return { ...opened, workspace };
}

/** Makes a workspace current with the course in a folder. */
export async function readCurrent(
  folder: string,
  workspace: Workspace,
  options?: FindOptions,
): Promise<{ readonly current: CurrentCourse; readonly textOf: LoadedCourse['textOf'] }> {
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
  return { current: workspace.update(files), textOf: (file) => texts.get(file)?.text };
}
