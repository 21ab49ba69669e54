import type { Course } from '../model/index.ts';

declare const checked: unique symbol;

/**
 * A course that has passed the check. Only `checkCourse` makes one, and the site and the files
 * accept nothing else: an unchecked page does not compile.
 */
export interface CheckedCourse {
  readonly course: Course;
  readonly [checked]: true;
}

/** For `check-course.ts` alone; the import rules of the rooms forbid it elsewhere. */
export function sealCourse(course: Course): CheckedCourse {
  return { course } as CheckedCourse;
}
