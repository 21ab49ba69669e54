import type { Workspace } from '../workspace/index.ts';
import {
  type LoadedCourse,
  loadedFrom,
  openCourse,
  type Progress,
  readCurrent,
} from './load-course.ts';
import type { LookAround } from './shelf/look-around.ts';

/** A course that is asked for again and again while its files change. */
export interface CourseSource {
  /**
   * The course as its files stand now.
   * @throws NoCourseError where the folder is no course.
   */
  current(): Promise<LoadedCourse>;
}

/** The course in a folder. What a change does not touch is kept from one time to the next. */
export function courseIn(
  folder: string,
  progress?: Progress,
  lookAround?: LookAround,
): CourseSource {
  let workspace: Workspace | undefined;
  return {
    async current() {
      if (workspace !== undefined)
        return loadedFrom(await readCurrent(folder, workspace, { lookAround }));
      const opened = await openCourse(folder, progress, lookAround);
      workspace = opened.workspace;
      return loadedFrom(opened);
    },
  };
}
