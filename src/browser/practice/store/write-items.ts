import { type Database, soundItem } from './connection.ts';
import { type Item, laterOf } from './item.ts';

/** What becomes of an item: `before` is what is kept, or known here and not written yet. */
export type Change = (before: Item | undefined, key: string) => Item | undefined;

/**
 * Reads, changes and writes in one transaction, which the browser puts in a row with those of other
 * tabs. `unwritten` are items that could not be written before. @returns what was written.
 */
export async function writeItems(
  database: Database,
  keys: readonly string[],
  unwritten: ReadonlyMap<string, Item>,
  change: Change,
): Promise<ReadonlyMap<string, Item>> {
  const transaction = database.transaction('items', 'readwrite');
  const { store, done } = transaction;
  const written = new Map<string, Item>();
  const work = async () => {
    for (const key of new Set([...unwritten.keys(), ...keys])) {
      const kept = soundItem(await store.get(key));
      const here = unwritten.get(key);
      const before = kept && here ? laterOf(kept, here, Date.now()) : (kept ?? here);
      const after = keys.includes(key) ? change(before, key) : before;
      if (after === undefined || after === kept) continue;
      await store.put(after);
      written.set(key, after);
    }
  };
  await Promise.all([work().catch((error) => abort(transaction, error)), done]);
  return written;
}

/** All or nothing. */
function abort(transaction: { abort(): void }, error: unknown): never {
  try {
    transaction.abort();
  } catch {
    // It has ended by itself, as where storage is full.
  }
  throw error;
}
