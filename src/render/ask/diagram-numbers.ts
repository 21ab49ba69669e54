import { type Course, outlineOf } from '../../model/index.ts';

const known = new WeakMap<Course, ReadonlyMap<string, number>>();

/**
 * The numbers of a course's diagrams, by the chapter's file and the block's key. They count through all chapters, so
 * that a diagram has the same number in a chapter printed alone and in the whole course.
 */
export function diagramNumbers(course: Course): ReadonlyMap<string, number> {
  const numbers = known.get(course) ?? count(course);
  known.set(course, numbers);
  return numbers;
}

function count(course: Course): ReadonlyMap<string, number> {
  const numbers = new Map<string, number>();
  for (const chapter of course.chapters) {
    for (const key of outlineOf(course, chapter).diagrams ?? []) {
      numbers.set(`${chapter.file} ${key}`, numbers.size + 1);
    }
  }
  return numbers;
}
