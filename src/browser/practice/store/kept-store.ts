import { Connection, isFull, soundItem } from './connection.ts';
import { databaseName } from './database-name.ts';
import { forgottenAt, noteForgotten } from './forgotten.ts';
import { credibleTime, type Item, keepLater, laterOf } from './item.ts';
import { Retry } from './retry.ts';
import { type Change, writeItems } from './write-items.ts';

/**
 * Why what is answered now is not kept: the browser allows nothing, or has no room, or has lost the
 * database for the moment.
 */
export type Trouble = 'denied' | 'full' | 'lost';

/**
 * The reader's progress in one course, shared by all tabs: in the browser's database, and in this page what that does
 * not take, which is written as soon as that can be done.
 */
export class KeptStore {
  trouble: Trouble | undefined;
  /** What is known here, written or not. */
  #seen = new Map<string, Item>();
  /** Of that, what could not be written. */
  readonly #unwritten = new Map<string, Item>();
  readonly #course: string;
  readonly #connection: Connection;
  readonly #tell: () => void;
  readonly #retry: Retry;
  /** One after the other, so that none forgets what another could not write. */
  #turn: Promise<unknown> = Promise.resolve();

  constructor(course: string, tell: () => void, onAgain: () => void) {
    this.#course = course;
    this.#connection = new Connection(databaseName(course));
    this.#tell = tell;
    this.#retry = new Retry(onAgain);
  }

  /** All items by position, as they are kept now. Writes what could not be written before. */
  all(): Promise<ReadonlyMap<string, Item>> {
    return this.#inTurn(async () => {
      if (this.#unwritten.size > 0) await this.#write([], () => undefined);
      try {
        const kept = await this.#connection.use((database) => database.getAll('items'));
        const items = kept.flatMap((item) => soundItem(item) ?? []);
        const fresh = new Map(items.map((item) => [item.key, item]));
        for (const item of this.#unwritten.values()) keepLater(fresh, item, Date.now());
        this.#seen = fresh;
        if (this.#unwritten.size === 0) this.#recover();
      } catch (error) {
        this.#fail(error);
      }
      return this.#seen;
    });
  }

  /** Changes one item: `change` gets what is kept at that moment, whoever wrote it. It may be called twice. */
  change(key: string, change: (before: Item | undefined) => Item): Promise<void> {
    return this.#inTurn(() => this.#write([key], change));
  }

  /** Takes items in, all or none: of two records of a position the later stays. @returns the keys of those taken. */
  merge(items: readonly Item[]): Promise<ReadonlySet<string>> {
    return this.#takeIn(items, (before, item) => laterOf(before, item, Date.now()));
  }

  /** Takes in, all or none, those of whose position nothing is kept. @returns the keys of those taken. */
  adopt(items: readonly Item[]): Promise<ReadonlySet<string>> {
    return this.#takeIn(items, (before) => before);
  }

  /** When all was forgotten last, ms since 1970; -1 for never. */
  get forgotten(): number {
    return forgottenAt(this.#course);
  }

  /** Forgets all items. @returns whether nothing is kept any more. */
  forget(): Promise<boolean> {
    return this.#inTurn(async () => {
      try {
        noteForgotten(this.#course, this.#latest());
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

  async #takeIn(
    items: readonly Item[],
    choose: (before: Item, item: Item) => Item,
  ): Promise<ReadonlySet<string>> {
    const incoming = new Map<string, Item>();
    for (const item of items) keepLater(incoming, item, Date.now());
    const taken = new Set<string>();
    const take: Change = (before, key) => {
      const item = incoming.get(key);
      const chosen = before && item ? choose(before, item) : (item ?? before);
      if (chosen === item) taken.add(key);
      else taken.delete(key);
      return chosen;
    };
    await this.#inTurn(() => this.#write([...incoming.keys()], take));
    return taken;
  }

  #inTurn<Result>(act: () => Promise<Result>): Promise<Result> {
    const result = this.#turn.then(act);
    this.#turn = result.catch(() => undefined);
    return result;
  }

  async #write(keys: readonly string[], change: Change): Promise<void> {
    try {
      const written = await this.#connection.use((database) =>
        writeItems(database, keys, this.#unwritten, change),
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
        this.#unwritten.set(key, after);
      }
    }
  }

  /** Now, or where a clock was put back, the time of what is known last. */
  #latest(): number {
    const now = Date.now();
    return Math.max(now, ...[...this.#seen.values()].map((item) => credibleTime(item, now)));
  }

  #recover(): void {
    this.trouble = undefined;
    this.#retry.callOff();
  }

  #fail(error: unknown): void {
    this.trouble = isFull(error) ? 'full' : this.#connection.wasOpen ? 'lost' : 'denied';
    this.#retry.plan();
  }
}
