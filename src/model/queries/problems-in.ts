import type { Course, CourseProblem } from '../types.ts';

/** All that could not be read or played: in the course's files, then in each chapter. */
export function problemsIn({ problems, chapters }: Course): CourseProblem[] {
  return [...problems, ...chapters.flatMap((chapter) => chapter.problems)];
}
