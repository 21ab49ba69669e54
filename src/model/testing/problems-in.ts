import { documentsOf } from '../../read/index.ts';
import type { Course, CourseProblem } from '../types.ts';

/** Everything that could not be read or played, in the course's files, then in each document. */
export function problemsIn(course: Course): CourseProblem[] {
  return [...course.problems, ...documentsOf(course).flatMap(({ problems }) => problems)];
}
