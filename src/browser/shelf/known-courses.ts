import type { ShelfCourse } from '../../contract/shelf-table.ts';
import type { Item } from '../practice/store/item.ts';
import type { Trouble } from '../practice/store/kept-store.ts';
import { openStore, type Store } from '../practice/store/store.ts';
import { loadNotes, loadTable } from './load-course.ts';
import { type MergedCourse, mergeCourses } from './merge-courses.ts';

/** A course of the shelf that asks moves, and where the reader's progress in it is kept. */
export interface KeptCourse {
  readonly shelved: ShelfCourse;
  readonly store: Store;
}

/** What is kept of the courses, and those of them as one course that the reader has practised. */
export interface KnownCourses {
  readonly merged: MergedCourse;
  readonly progressOf: (shelved: ShelfCourse) => ReadonlyMap<string, Item>;
  readonly storeOf: (shelved: ShelfCourse) => Store | undefined;
  /** Courses whose tables could not be loaded. */
  readonly missing: readonly ShelfCourse[];
  readonly trouble: Trouble | undefined;
}

/** Opens each course's own database, as its own page of practice does. */
export function openCourses(courses: readonly ShelfCourse[], onChange: () => void): KeptCourse[] {
  return courses
    .filter(({ notes }) => notes !== undefined)
    .map((shelved) => ({ shelved, store: openStore(shelved.course, onChange) }));
}

let made: { readonly of: string; readonly merged: MergedCourse } | undefined;

/** Looks at what is kept now, and loads the courses of which anything is: the others are not begun. */
export async function lookAt(courses: readonly KeptCourse[]): Promise<KnownCourses> {
  const kept = await Promise.all(
    courses.map(async ({ shelved, store }) => [shelved, await store.all()] as const),
  );
  const progress = new Map(kept);
  const begun = kept.filter(([, items]) => items.size > 0).map(([shelved]) => shelved);
  const loaded = await Promise.all(
    begun.map(async (shelved) => {
      try {
        const [table, notes] = await Promise.all([loadTable(shelved), loadNotes(shelved)]);
        return { shelved, table, notes };
      } catch (error) {
        console.error(error);
        return { shelved };
      }
    }),
  );
  const whole = loaded.flatMap((each) => (each.table === undefined ? [] : [each]));
  const of = whole.map(({ shelved }) => shelved.at).join();
  // The same while a session goes on, whose positions are counted by it.
  if (made?.of !== of) made = { of, merged: mergeCourses(whole) };
  return {
    merged: made.merged,
    progressOf: (shelved) => progress.get(shelved) ?? new Map(),
    storeOf: (shelved) => courses.find((each) => each.shelved === shelved)?.store,
    missing: loaded.flatMap(({ shelved, table }) => (table === undefined ? [shelved] : [])),
    trouble: courses.map(({ store }) => store.trouble).find((each) => each !== undefined),
  };
}
