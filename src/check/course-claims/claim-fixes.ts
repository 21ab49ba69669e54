import type { Fix } from '../../diagnostics/index.ts';
import type { Course } from '../../model/index.ts';
import { summariseChapter } from '../chapter-summary.ts';
import { checkOptions } from '../check-course.ts';
import { claimsToAdd } from '../plain-words/index.ts';
import { createCourseView, makeCourseIndex } from '../view/index.ts';

/**
 * Claims for all sentences of a course that state what a claim can prove, where none says so yet. They are
 * true: each is judged where it would stand.
 * @param textOf the files as they were read: nothing is put where they are not as expected.
 */
export function claimFixes(course: Course, textOf: (file: string) => string | undefined): Fix[] {
  const { settings, chapters } = course;
  const options = checkOptions(settings);
  if (options.off.has('words-false')) return [];
  const index = makeCourseIndex(
    chapters.map((chapter) => summariseChapter(chapter, settings.side)),
  );
  const { view } = createCourseView(index, options);
  return chapters.flatMap((chapter) =>
    [...claimsToAdd(chapter, view)].flatMap(({ fix, behind }) => {
      const { file, start } = fix.place;
      const before = textOf(file)?.slice(start.offset - behind.length, start.offset);
      return before === behind ? [fix] : [];
    }),
  );
}
