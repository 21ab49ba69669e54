import { type LoadedCourse, loadCourse } from './load-course.ts';

/** A course that is asked for again and again while its files change. */
export interface CourseSource {
  /**
   * The course as its files stand now; the same object as before where nothing changed.
   * @throws NoCourseError where the folder is no course.
   */
  current(): Promise<LoadedCourse>;
}

/** The course in a folder. */
export function courseIn(folder: string): CourseSource {
  return { current: () => loadCourse(folder) };
}
