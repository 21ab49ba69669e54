import type { Stats } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';

/** Milliseconds: changes this close together are one. */
const together = 15;
/** Milliseconds: an editor that empties a file before writing it is done by then. */
const writing = 100;

export interface GatheredChanges {
  /** A file or folder has changed; without `stats` if it is gone. */
  add(file: string, stats?: Stats): void;
  /** Resolves when editors have finished writing. */
  settled(): Promise<void>;
  close(): void;
}

/** Calls `onChange` once for changes that come together. */
export function gatherChanges(onChange: () => void): GatheredChanges {
  /** Files that were empty at their last change, and new folders. */
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
