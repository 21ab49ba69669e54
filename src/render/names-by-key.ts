import type { Course } from '../model/index.ts';
import { keyAt } from './ask/node-at.ts';

/** The author's names of each position, by key, in the order of the course's labels. */
export function namesByKey(course: Course): ReadonlyMap<string, readonly string[]> {
  const found = known.get(course) ?? findNames(course);
  known.set(course, found);
  return found;
}

const known = new WeakMap<Course, ReadonlyMap<string, readonly string[]>>();

function findNames(course: Course): ReadonlyMap<string, readonly string[]> {
  const names = new Map<string, string[]>();
  for (const { name, ref } of Object.values(course.labels)) {
    const key = keyAt(course, ref);
    if (key === undefined) continue;
    const there = names.get(key);
    if (there) there.push(name);
    else names.set(key, [name]);
  }
  return names;
}
