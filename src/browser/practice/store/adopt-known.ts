import type { PracticeCourse } from '../session/practice-course.ts';
import { itemsElsewhere, missingHere } from './known-elsewhere.ts';
import type { Store } from './store.ts';

/**
 * Takes over what the reader knows from other courses of this origin, or from this one under
 * another name.
 * @returns how many positions were taken over.
 */
export async function adoptKnown(course: PracticeCourse, store: Store): Promise<number> {
  const known = await store.all();
  // Without sight of what is kept here, nothing can be said to be missing.
  if (store.trouble !== undefined) return 0;
  if (course.items.every(({ key }) => known.has(key))) return 0;
  const found = await itemsElsewhere(course.table.course);
  const { forgotten: since } = store;
  const missing = missingHere(found, course, { known, since, now: Date.now() });
  const taken = await store.adopt(missing);
  return taken.size;
}
