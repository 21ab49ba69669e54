import { ownPrefix } from '../../contract/free-play.ts';
import { parseJson } from '../../contract/parse-json.ts';
import { isEmpty, laterOf, type OwnEntry, readOwnEntry } from './own-entry.ts';

export interface OwnStore {
  readonly entries: ReadonlyMap<string, OwnEntry>;
  /** Keeps an entry, or removes an empty one. @returns whether the browser has kept it. */
  keep(entry: OwnEntry): boolean;
  /** Takes in entries that are newer than ours. @returns how many. */
  take(entries: readonly OwnEntry[]): number;
  /** Undoes the last change of this page. @returns whether there was one. */
  undo(): boolean;
  /** Calls `onChange` after each change, also of another tab. */
  follow(onChange: () => void): void;
}

/** The part of a storage that is needed; `localStorage` is one. */
export type Keeper = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

/**
 * Each position has an item of its own in the storage, so that tabs never overwrite each other's. Without storage,
 * entries last as long as the page.
 */
export function openOwnStore(course: string, keeper: Keeper | undefined): OwnStore {
  const prefix = `${ownPrefix}${course}:`;
  const entries = new Map<string, OwnEntry>();
  const before: (readonly [key: string, entry: OwnEntry | undefined])[] = [];
  const listeners: (() => void)[] = [];
  const tell = () => {
    for (const listener of listeners) listener();
  };

  function read(name: string): void {
    const entry = readOwnEntry(parseJson(keeper?.getItem(name) ?? null));
    const key = name.slice(prefix.length);
    if (entry?.key === key) entries.set(key, entry);
    else entries.delete(key);
  }
  for (let index = 0; index < (keeper?.length ?? 0); index++) {
    const name = keeper?.key(index);
    if (name?.startsWith(prefix)) read(name);
  }
  globalThis.addEventListener?.('storage', ({ key }) => {
    if (key === null) entries.clear();
    else if (key.startsWith(prefix)) read(key);
    else return;
    tell();
  });

  function write(key: string, entry: OwnEntry | undefined): boolean {
    const gone = entry === undefined || isEmpty(entry);
    if (gone) entries.delete(key);
    else entries.set(key, entry);
    try {
      if (gone) keeper?.removeItem(prefix + key);
      else keeper?.setItem(prefix + key, JSON.stringify(entry));
    } catch {
      // Full, or forbidden: the page says so.
      return false;
    }
    return keeper !== undefined;
  }

  return {
    entries,
    keep(entry) {
      before.push([entry.key, entries.get(entry.key)]);
      const kept = write(entry.key, entry);
      tell();
      return kept;
    },
    take(others) {
      const later = laterOf(entries, others);
      for (const entry of later) write(entry.key, entry);
      if (later.length > 0) tell();
      return later.length;
    },
    undo() {
      const last = before.pop();
      if (last === undefined) return false;
      write(...last);
      tell();
      return true;
    },
    follow: (onChange) => void listeners.push(onChange),
  };
}

/** The browser's storage, where it lets the page have it. */
export function browserKeeper(): Keeper | undefined {
  try {
    // The mere question may throw.
    return localStorage;
  } catch {
    return undefined;
  }
}
