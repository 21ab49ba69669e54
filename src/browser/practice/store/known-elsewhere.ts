import { openDB } from 'idb';
import type { Progress } from '../session/overview.ts';
import type { PracticeCourse } from '../session/practice-course.ts';
import { type Database, type Kept, soundItem } from './connection.ts';
import { databaseName } from './database-name.ts';
import { credibleTime, type Item, keepLater } from './item.ts';

/**
 * Of items from anywhere, those that this course asks in the same way: the same position with the
 * same advice. That position has the side to move in its key, so a course for the other side has
 * none of them.
 */
export function knownHere(
  items: readonly Item[],
  { items: asked }: PracticeCourse,
): readonly Item[] {
  const advice = new Map(asked.map(({ key, advice }) => [key, advice]));
  return items.filter((item) => advice.get(item.key)?.includes(item.advice));
}

/** Of those, what is not known here: the later of two, and only from after `since` (ms since 1970). */
export function missingHere(
  items: readonly Item[],
  course: PracticeCourse,
  { known, since, now }: { readonly known: Progress; readonly since: number; readonly now: number },
): readonly Item[] {
  const missing = new Map<string, Item>();
  for (const item of knownHere(items, course)) {
    if (known.has(item.key) || credibleTime(item, now) <= since) continue;
    keepLater(missing, item, now);
  }
  return [...missing.values()];
}

/**
 * All items of the other courses of this origin, a course's earlier names among them. A browser that
 * does not list its databases (Firefox before 126) has none to tell.
 */
export async function itemsElsewhere(course: string): Promise<readonly Item[]> {
  const all = await listDatabases();
  const names = all.flatMap(({ name = '' }) =>
    name.startsWith(databaseName('')) && name !== databaseName(course) ? [name] : [],
  );
  const found = await Promise.allSettled(names.map(itemsOf));
  // One that cannot be read, or that some other program made, holds nothing for this course.
  return found.flatMap((result) => (result.status === 'fulfilled' ? result.value : []));
}

async function listDatabases(): Promise<readonly IDBDatabaseInfo[]> {
  try {
    return (await indexedDB.databases?.()) ?? [];
  } catch {
    // A browser that keeps nothing has nothing.
    return [];
  }
}

async function itemsOf(name: string): Promise<readonly Item[]> {
  // Whatever version it has; one that has gone by now is not made again.
  const database: Database = await openDB<Kept>(name, undefined, {
    upgrade: (_database, _old, _new, transaction) => transaction.abort(),
    blocking: (_old, _new, event) => (event.target as IDBDatabase).close(),
  });
  try {
    const items = await database.getAll('items');
    return items.flatMap((item) => soundItem(item) ?? []);
  } finally {
    database.close();
  }
}
