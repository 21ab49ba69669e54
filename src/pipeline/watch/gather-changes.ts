import type { Stats } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';

/** In milliseconds: changes that come as close together as this are one. */
const together = 15;
/** An editor that empties a file before it writes it has written it after this time. */
const writing = 100;

export interface GatheredChanges {
  /** A file or folder has changed; without `stats` nothing is known of it, as when it is gone. */
  add(file: string, stats?: Stats): void;
  /** Settles when no file has changed for so long that what an editor was writing is written. */
  settled(): Promise<void>;
  close(): void;
}

/** Calls `onChange` once for changes that come together. */
export function gatherChanges(onChange: () => void): GatheredChanges {
  /** Files that were empty when they changed last, and folders, which are filled or watched only now. */
  const unfinished = new Set<string>();
  let last = Number.NEGATIVE_INFINITY;
  let timer: NodeJS.Timeout | undefined;
  return {
    add(file, stats) {
      last = performance.now();
      if (stats?.isFile() && stats.size > 0) unfinished.delete(file);
      else unfinished.add(file);
      clearTimeout(timer);
      timer = setTimeout(
        () => {
          unfinished.clear();
          onChange();
        },
        unfinished.size > 0 ? writing : together,
      );
    },
    async settled() {
      const rest = () => last + writing - performance.now();
      while (rest() > 0) await wait(rest());
    },
    close: () => clearTimeout(timer),
  };
}
