import { databaseName } from '../practice/store/database-name.ts';
import type { Item } from '../practice/store/item.ts';

/** The part of an item that is shown; `practice/store/read-item.ts` checks whole items. */
export type Known = Pick<Item, 'key' | 'advice' | 'last' | 'due'>;

/** What the reader knows of a course, by position; empty without readable progress. */
export async function readProgress(course: string): Promise<ReadonlyMap<string, Known>> {
  const kept = await keptItems(databaseName(course)).catch((): readonly unknown[] => []);
  return new Map(kept.filter(isKnown).map((item) => [item.key, item]));
}

function isKnown(kept: unknown): kept is Known {
  const { key, advice, last, due } = (kept ?? {}) as Readonly<Record<string, unknown>>;
  return (
    typeof key === 'string' &&
    typeof advice === 'string' &&
    Number.isInteger(last) &&
    Number.isInteger(due)
  );
}

/** Does not create a missing database: a page that only reads leaves no trace. */
function keptItems(name: string): Promise<readonly unknown[]> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(name);
    opening.onupgradeneeded = () => opening.transaction?.abort();
    opening.onerror = (event) => {
      event.preventDefault();
      resolve([]);
    };
    opening.onsuccess = () => {
      const database = opening.result;
      database.onversionchange = () => database.close();
      const reading = database.transaction('items').objectStore('items').getAll();
      reading.onsuccess = () => {
        database.close();
        resolve(reading.result);
      };
      reading.onerror = () => reject(reading.error);
    };
  });
}
