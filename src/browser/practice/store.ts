import { Connection, type Database, databaseName, isFull } from './connection.ts';
import { dayOf } from './day.ts';
import { type Item, laterOf } from './item.ts';
import { endOfDays, readItem } from './read-item.ts';

/**
 * Why what is answered now is not kept: the browser allows nothing, or has no room, or has lost the
 * database for the moment.
 */
export type Trouble = 'denied' | 'full' | 'lost';

/** The reader's progress in one course, shared by all tabs. */
export interface Store {
  readonly trouble: Trouble | undefined;
  /** All items by position, as they are kept now. Writes what could not be written before. */
  all(): Promise<ReadonlyMap<string, Item>>;
  /**
   * Changes one item: `change` gets what is kept at that moment, whoever wrote it. It may be called
   * twice. What cannot be written lives on in this page, and is written as soon as that can be done.
   */
  change(key: string, change: (before: Item | undefined) => Item): Promise<void>;
  /** Takes items in, all or none: of two records of a position the later stays. @returns the keys of those taken. */
  merge(items: readonly Item[]): Promise<ReadonlySet<string>>;
  /** Forgets all items. @returns whether nothing is kept any more. */
  forget(): Promise<boolean>;
}

/**
 * Opens what is kept of a course; `onChange` is called when another tab has changed it, and when
 * what could not be done is to be tried again.
 */
export function openStore(course: string, onChange: () => void): Store {
  const name = databaseName(course);
  const channel = openChannel(name, onChange);
  return new KeptStore(new Connection(name), () => channel?.postMessage('changed'), onChange);
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

type Change = (before: Item | undefined, key: string) => Item | undefined;

/** Between two tries, in ms; each waits twice as long as the one before. */
const [firstWait, longestWait] = [1000, 60_000];

class KeptStore implements Store {
  trouble: Trouble | undefined;
  /** What is known here, written or not. */
  #seen = new Map<string, Item>();
  /** Keys of what could not be written. */
  readonly #unwritten = new Set<string>();
  readonly #connection: Connection;
  readonly #tell: () => void;
  readonly #onAgain: () => void;
  /** One after the other, so that none forgets what another could not write. */
  #turn: Promise<unknown> = Promise.resolve();
  #again: ReturnType<typeof setTimeout> | undefined;
  #wait = firstWait;

  constructor(connection: Connection, tell: () => void, onAgain: () => void) {
    this.#connection = connection;
    this.#tell = tell;
    this.#onAgain = onAgain;
  }

  all(): Promise<ReadonlyMap<string, Item>> {
    return this.#inTurn(async () => {
      if (this.#unwritten.size > 0) await this.#write([], () => undefined);
      try {
        const kept = await this.#connection.use((database) => database.getAll('items'));
        const items = kept.flatMap((item) => sound(item) ?? []);
        const fresh = new Map(items.map((item) => [item.key, item]));
        for (const key of this.#unwritten) keepLater(fresh, this.#seen.get(key));
        this.#seen = fresh;
        if (this.#unwritten.size === 0) this.#recover();
      } catch (error) {
        this.#fail(error);
      }
      return this.#seen;
    });
  }

  change(key: string, change: (before: Item | undefined) => Item): Promise<void> {
    return this.#inTurn(() => this.#write([key], change));
  }

  async merge(items: readonly Item[]): Promise<ReadonlySet<string>> {
    const incoming = new Map<string, Item>();
    for (const item of items) keepLater(incoming, item);
    const taken = new Set<string>();
    const take: Change = (before, key) => {
      const item = incoming.get(key);
      const chosen = before && item ? later(before, item) : (item ?? before);
      if (chosen === item) taken.add(key);
      else taken.delete(key);
      return chosen;
    };
    await this.#inTurn(() => this.#write([...incoming.keys()], take));
    return taken;
  }

  forget(): Promise<boolean> {
    return this.#inTurn(async () => {
      try {
        await this.#connection.use((database) => database.clear('items'));
      } catch {
        // The browser refuses to write: what is kept stays, and the page says so.
        return false;
      }
      this.#seen = new Map();
      this.#unwritten.clear();
      this.#recover();
      this.#tell();
      return true;
    });
  }

  #inTurn<Result>(act: () => Promise<Result>): Promise<Result> {
    const result = this.#turn.then(act);
    this.#turn = result.catch(() => undefined);
    return result;
  }

  async #write(keys: readonly string[], change: Change): Promise<void> {
    try {
      const written = await this.#connection.use((database) =>
        this.#transact(database, keys, change),
      );
      for (const [key, item] of written) this.#seen.set(key, item);
      this.#unwritten.clear();
      this.#recover();
      if (written.size > 0) this.#tell();
    } catch (error) {
      // Told on the page (`trouble`); here it goes on with what this page knows.
      this.#fail(error);
      for (const key of keys) {
        const after = change(this.#seen.get(key), key);
        if (after === undefined) continue;
        this.#seen.set(key, after);
        this.#unwritten.add(key);
      }
    }
  }

  /** Reads, changes and writes in one transaction, which the browser puts in a row with those of other tabs. */
  async #transact(
    database: Database,
    keys: readonly string[],
    change: Change,
  ): Promise<ReadonlyMap<string, Item>> {
    const transaction = database.transaction('items', 'readwrite');
    const { store, done } = transaction;
    const written = new Map<string, Item>();
    const work = async () => {
      for (const key of new Set([...this.#unwritten, ...keys])) {
        const kept = sound(await store.get(key));
        const unwritten = this.#unwritten.has(key) ? this.#seen.get(key) : undefined;
        const before = kept && unwritten ? later(kept, unwritten) : (kept ?? unwritten);
        const after = keys.includes(key) ? change(before, key) : before;
        if (after === undefined || after === kept) continue;
        await store.put(after);
        written.set(key, after);
      }
    };
    await Promise.all([work().catch((error) => abort(transaction, error)), done]);
    return written;
  }

  #recover(): void {
    this.trouble = undefined;
    this.#wait = firstWait;
    clearTimeout(this.#again);
    this.#again = undefined;
  }

  #fail(error: unknown): void {
    this.trouble = isFull(error) ? 'full' : this.#connection.wasOpen ? 'lost' : 'denied';
    this.#again ??= setTimeout(() => {
      this.#again = undefined;
      this.#wait = Math.min(this.#wait * 2, longestWait);
      this.#onAgain();
    }, this.#wait);
  }
}

function sound(item: unknown): Item | undefined {
  return readItem(item, { today: dayOf(Date.now()), latest: endOfDays })?.item;
}

function keepLater(items: Map<string, Item>, item: Item | undefined): void {
  if (item === undefined) return;
  const kept = items.get(item.key);
  items.set(item.key, kept === undefined ? item : later(kept, item));
}

function later(a: Item, b: Item): Item {
  return laterOf(a, b, Date.now());
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
