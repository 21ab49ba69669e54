import { inCourseOrder, type Label } from '../../model/index.ts';
import type { NamedPositions } from '../site-data.ts';
import type { PlateMaker } from './plates.ts';
import type { SiteContext } from './site-context.ts';

/** The positions that have names, chapter by chapter, in the order of the course. */
export function namedPositions(
  { course, addresses }: SiteContext,
  { plate }: PlateMaker,
): NamedPositions[] {
  const labels = new Map<string, Label[]>();
  for (const label of Object.values(course.labels)) {
    const there = labels.get(label.ref.chapter);
    if (there) there.push(label);
    else labels.set(label.ref.chapter, [label]);
  }
  const inOrder = inCourseOrder(course);
  return course.chapters.flatMap(({ id, title, file }) => {
    const plates = (labels.get(file) ?? [])
      .sort((a, b) => inOrder(a.ref, b.ref))
      .flatMap((label) => plate(label.ref, { title: label.title, chapter: file }) ?? []);
    if (plates.length === 0) return [];
    return [{ chapter: title, id: `chapter-${id}`, page: addresses.page(file), plates }];
  });
}
