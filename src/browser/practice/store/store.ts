import { databaseName } from './database-name.ts';
import { KeptStore } from './kept-store.ts';

export type Store = Pick<KeptStore, keyof KeptStore>;

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
