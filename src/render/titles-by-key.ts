import type { Course } from '../model/index.ts';
import { keyAt } from './ask/node-at.ts';

/** The author's title of each position that has one, by key: the first in the order of the course. */
export function titlesByKey(course: Course): ReadonlyMap<string, string> {
  const found = known.get(course) ?? findTitles(course);
  known.set(course, found);
  return found;
}

const known = new WeakMap<Course, ReadonlyMap<string, string>>();

function findTitles(course: Course): ReadonlyMap<string, string> {
  const titles = new Map<string, string>();
  for (const { title, ref } of Object.values(course.labels)) {
    const key = title === undefined ? undefined : keyAt(course, ref);
    if (key !== undefined && title !== undefined && !titles.has(key)) titles.set(key, title);
  }
  return titles;
}
