import { dataOf } from '../../../contract/attributes.ts';
import type { CourseExercise, CourseExercises } from '../../../contract/course-exercises.ts';
import { resultsOf } from '../../exercise/results.ts';
import { loadScript } from '../../load-script.ts';

declare global {
  /** Set by the site's script with the exercises. */
  var courseExercises: CourseExercises | undefined;
}

/** The exercises of the course, if it has any and their script loads. */
export async function loadExercises(page: Element): Promise<CourseExercises | undefined> {
  const { exercises } = dataOf('page', page as HTMLElement);
  if (exercises === undefined) return undefined;
  try {
    if (globalThis.courseExercises === undefined) await loadScript(exercises);
  } catch {
    // Without a connection moves can still be practised.
    return undefined;
  }
  return globalThis.courseExercises;
}

/** Exercises of some chapters that the reader has not yet solved at once. */
export function stillToFind(
  { exercises }: CourseExercises,
  chapters: ReadonlySet<number>,
  course: string,
): readonly CourseExercise[] {
  const results = resultsOf(course);
  return exercises.filter(
    ({ chapter, key }) => chapters.has(chapter) && results[key]?.grade !== 'once',
  );
}
