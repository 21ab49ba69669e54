import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { type Item, laterOf } from './item.ts';

interface Kept extends DBSchema {
  items: { key: string; value: Item };
}

/** Why what is answered now is not kept: the browser allows nothing, or has no room. */
export type Trouble = 'denied' | 'full';

/** The reader's progress in one course, shared by all tabs. */
export interface Store {
  readonly trouble: Trouble | undefined;
  /** All items by position, as they are kept now. */
  all(): Promise<ReadonlyMap<string, Item>>;
  /**
   * Changes one item: `change` gets what is kept at that moment, whoever wrote it. What cannot be
   * written lives on in this page, and is written when that can be done again.
   */
  change(key: string, change: (before: Item | undefined) => Item): Promise<Item>;
  /** Takes items in, all or none: of two records of a position the later stays. @returns how many were taken. */
  merge(items: readonly Item[]): Promise<number>;
  /** Forgets all items. @returns whether nothing is kept any more. */
  forget(): Promise<boolean>;
}

/** Opens what is kept of a course; `onOthers` is called when another tab has changed it. */
export async function openStore(course: string, onOthers: () => void): Promise<Store> {
  const name = `practice:${course}`;
  const channel = openChannel(name, onOthers);
  const database = await openDatabase(name);
  return new KeptStore(database, () => channel?.postMessage('changed'));
}

async function openDatabase(name: string): Promise<IDBPDatabase<Kept> | undefined> {
  try {
    return await openDB<Kept>(name, 1, {
      upgrade: (database) => {
        database.createObjectStore('items', { keyPath: 'key' });
      },
      // A later edition of the page wants to change the database: let it.
      blocking: (_current, _next, event) => (event.target as IDBDatabase).close(),
    });
  } catch {
    // Refused, as by a private window; the page tells it (`trouble`).
    return undefined;
  }
}

function openChannel(name: string, onMessage: () => void): BroadcastChannel | undefined {
  try {
    const channel = new BroadcastChannel(name);
    channel.addEventListener('message', onMessage);
    return channel;
  } catch {
    // A page of a folder (file://) may have none: then a tab sees the others when it is looked at.
    return undefined;
  }
}

class KeptStore implements Store {
  trouble: Trouble | undefined;
  /** What is known here, written or not. */
  #seen = new Map<string, Item>();
  /** Keys of what could not be written. */
  readonly #unwritten = new Set<string>();
  readonly #database: IDBPDatabase<Kept> | undefined;
  readonly #tell: () => void;

  constructor(database: IDBPDatabase<Kept> | undefined, tell: () => void) {
    this.#database = database;
    this.#tell = tell;
    if (database === undefined) this.trouble = 'denied';
  }

  async all(): Promise<ReadonlyMap<string, Item>> {
    const kept = await this.#read();
    if (kept !== undefined) {
      const fresh = new Map(kept.map((item) => [item.key, item]));
      for (const key of this.#unwritten) this.#keepLater(fresh, this.#seen.get(key));
      this.#seen = fresh;
    }
    return this.#seen;
  }

  async change(key: string, change: (before: Item | undefined) => Item): Promise<Item> {
    let changed: Item | undefined;
    await this.#write([key], (before) => {
      changed = change(before);
      return changed;
    });
    return changed ?? change(this.#seen.get(key));
  }

  async merge(items: readonly Item[]): Promise<number> {
    const incoming = new Map(items.map((item) => [item.key, item]));
    let taken = 0;
    await this.#write(
      [...incoming.keys()],
      (before, key) => {
        const item = incoming.get(key);
        const later =
          before === undefined || item === undefined ? (item ?? before) : this.#later(before, item);
        if (later === item) taken++;
        return later;
      },
      () => {
        taken = 0;
      },
    );
    return taken;
  }

  async forget(): Promise<boolean> {
    try {
      await this.#database?.clear('items');
    } catch {
      // The browser refuses to write: what is kept stays, and the page says so.
      return false;
    }
    this.#seen = new Map();
    this.#unwritten.clear();
    this.#tell();
    return true;
  }

  /** Reads, changes and writes in one transaction, which the browser puts in a row with those of other tabs. */
  async #write(
    keys: readonly string[],
    change: (before: Item | undefined, key: string) => Item | undefined,
    onAgain: () => void = () => undefined,
  ): Promise<void> {
    try {
      if (this.#database === undefined) throw new Error('nothing can be kept');
      const transaction = this.#database.transaction('items', 'readwrite');
      const { store, done } = transaction;
      const written = new Map<string, Item>();
      const work = async () => {
        for (const key of new Set([...this.#unwritten, ...keys])) {
          const kept = await store.get(key);
          const unwritten = this.#unwritten.has(key) ? this.#seen.get(key) : undefined;
          const before = kept && unwritten ? this.#later(kept, unwritten) : (kept ?? unwritten);
          const after = keys.includes(key) ? change(before, key) : before;
          if (after === undefined || after === kept) continue;
          await store.put(after);
          written.set(key, after);
        }
      };
      await Promise.all([work().catch((error) => abort(transaction, error)), done]);
      for (const [key, item] of written) this.#seen.set(key, item);
      this.#unwritten.clear();
      this.trouble = undefined;
      this.#tell();
    } catch {
      // Told on the page (`trouble`); here it goes on with what this page knows.
      this.trouble = this.#database === undefined ? 'denied' : 'full';
      onAgain();
      for (const key of keys) {
        const after = change(this.#seen.get(key), key);
        if (after === undefined) continue;
        this.#seen.set(key, after);
        this.#unwritten.add(key);
      }
    }
  }

  async #read(): Promise<Item[] | undefined> {
    try {
      return await this.#database?.getAll('items');
    } catch {
      this.trouble = 'denied';
      return undefined;
    }
  }

  #keepLater(items: Map<string, Item>, item: Item | undefined): void {
    if (item === undefined) return;
    const kept = items.get(item.key);
    items.set(item.key, kept === undefined ? item : this.#later(kept, item));
  }

  #later(a: Item, b: Item): Item {
    return laterOf(a, b, Date.now());
  }
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
