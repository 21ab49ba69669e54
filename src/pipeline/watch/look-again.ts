import type { Stats } from 'node:fs';
import { stat } from 'node:fs/promises';

/** Milliseconds: the watcher drops a change within 50 of another to the same file. */
const dropping = 60;

export interface SecondLooks {
  /** The watcher has reported a change to a file, with these `stats`. */
  plan(file: string, stats: Stats): void;
  close(): void;
}

/** Looks at each changed file once more, and reports changes that the watcher dropped. */
export function lookAgain(onMissed: (file: string, stats: Stats) => void): SecondLooks {
  const planned = new Map<string, NodeJS.Timeout>();
  let closed = false;
  const plan = (file: string, { mtimeMs, size }: Stats) => {
    clearTimeout(planned.get(file));
    const timer = setTimeout(async () => {
      planned.delete(file);
      const now = await stat(file).catch(() => undefined);
      if (closed || !now || (now.mtimeMs === mtimeMs && now.size === size)) return;
      onMissed(file, now);
      plan(file, now);
    }, dropping);
    planned.set(file, timer);
  };
  return {
    plan,
    close() {
      closed = true;
      for (const timer of planned.values()) clearTimeout(timer);
    },
  };
}
