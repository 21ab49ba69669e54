import { databaseName } from './database-name.ts';
import type { Item } from './item.ts';
import { KeptStore } from './kept-store.ts';

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
  /** Takes in, all or none, those of whose position nothing is kept. @returns the keys of those taken. */
  adopt(items: readonly Item[]): Promise<ReadonlySet<string>>;
  /** Forgets all items. @returns whether nothing is kept any more. */
  forget(): Promise<boolean>;
  /** When all was forgotten last, ms since 1970; -1 for never. */
  readonly forgotten: number;
}

/**
 * Opens what is kept of a course; `onChange` is called when another tab has changed it, and when
 * what could not be done is to be tried again.
 */
export function openStore(course: string, onChange: () => void): Store {
  const name = databaseName(course);
  const channel = openChannel(name, onChange);
  return new KeptStore(course, () => channel?.postMessage('changed'), onChange);
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
