import type { CourseOnShelf, ShelfAround } from '../../read/index.ts';
import type { CourseEntry } from './course-entry.ts';

/**
 * What a course may know of the others of its shelf.
 * @param own its id.
 * @param entries of the courses that it may link to, itself among them or not.
 */
export function shelfAround(
  own: string,
  entries: Iterable<Pick<CourseEntry, 'id' | 'title' | 'names'>>,
  { together, site }: Pick<ShelfAround, 'together' | 'site'>,
): ShelfAround {
  const courses = new Map<string, CourseOnShelf>();
  for (const { id, title, names } of entries) if (id !== own) courses.set(id, { title, names });
  return { own, courses, together, ...(site !== undefined && { site }) };
}
