import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { dayOf } from '../session/day.ts';
import type { Item } from './item.ts';
import { endOfDays, readItem } from './read-item.ts';

export interface Kept extends DBSchema {
  items: { key: string; value: Item };
}
export type Database = IDBPDatabase<Kept>;

/** Ms that the page waits for a database to open: answers must not hang on it. */
const patience = 4000;

/** An item as kept by any edition of this page; nothing if malformed. */
export function soundItem(kept: unknown): Item | undefined {
  return readItem(kept, { today: dayOf(Date.now()), latest: endOfDays })?.item;
}

/**
 * A database that is opened when it is needed, and again when the browser or another page has
 * closed or deleted it, or would not open it.
 */
export class Connection {
  /** Whether it was ever open: later failures may pass. */
  wasOpen = false;
  readonly #name: string;
  #opening: Promise<Database> | undefined;
  #deadline = 0;

  constructor(name: string) {
    this.#name = name;
  }

  /** @throws what the browser says, after a second try on a fresh connection. */
  async use<Result>(work: (database: Database) => Promise<Result>): Promise<Result> {
    try {
      return await work(await this.#open());
    } catch (error) {
      // These would only fail again.
      if (isFull(error) || hasName(error, 'TimeoutError')) throw error;
      this.#drop(this.#opening);
      return work(await this.#open());
    }
  }

  async #open(): Promise<Database> {
    if (this.#opening === undefined) {
      this.#deadline = performance.now() + patience;
      const opening = this.#openNew(() => this.#drop(opening));
      this.#opening = opening;
      opening.then(
        () => {
          this.wasOpen = true;
        },
        () => this.#drop(opening),
      );
    }
    return inTime(this.#opening, this.#deadline - performance.now());
  }

  async #openNew(onGone: () => void): Promise<Database> {
    return openDB<Kept>(this.#name, 1, {
      upgrade: (database) => {
        database.createObjectStore('items', { keyPath: 'key' });
      },
      // Another page deletes the database, or a later edition changes it: let it.
      blocking: onGone,
      terminated: onGone,
    });
  }

  #drop(gone: Promise<Database> | undefined): void {
    if (this.#opening === gone) this.#opening = undefined;
    gone?.then(
      (database) => database.close(),
      () => undefined,
    );
  }
}

export function isFull(error: unknown): boolean {
  return hasName(error, 'QuotaExceededError');
}

function hasName(error: unknown, name: string): boolean {
  return error instanceof Error && error.name === name;
}

/** Safari has left requests to open unanswered; one that is answered late is used all the same. */
function inTime<Result>(result: Promise<Result>, ms: number): Promise<Result> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    const fail = () => reject(new DOMException('The database does not open.', 'TimeoutError'));
    timer = setTimeout(fail, Math.max(0, ms));
  });
  return Promise.race([result, late]).finally(() => clearTimeout(timer));
}
