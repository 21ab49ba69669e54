import { type Course, inCourseOrder, type Label } from '../../model/index.ts';
import { type Addresses, askOf, positionInWords } from '../../render/index.ts';
import { stringsFor } from '../../strings/index.ts';
import type { NamedPositions } from '../site-data.ts';

/** The positions that have names, chapter by chapter, in the order of the course. */
export function namedPositions(course: Course, addresses: Addresses): NamedPositions[] {
  const strings = stringsFor(course.settings.language, course.settings.notation);
  const labels = new Map<string, Label[]>();
  for (const label of Object.values(course.labels)) {
    const there = labels.get(label.ref.chapter);
    if (there) there.push(label);
    else labels.set(label.ref.chapter, [label]);
  }
  const inOrder = inCourseOrder(course);
  return course.chapters.flatMap((chapter) => {
    const entries = (labels.get(chapter.file) ?? [])
      .sort((a, b) => inOrder(a.ref, b.ref))
      .map(({ title, ref }) => ({
        ...(title !== undefined && { title }),
        href: addresses.href(ref),
        words: positionInWords(askOf(course), ref, strings, chapter.file),
      }));
    if (entries.length === 0) return [];
    return [{ chapter: chapter.title, page: addresses.page(chapter.file), entries }];
  });
}
