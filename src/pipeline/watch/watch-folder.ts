import type { Stats } from 'node:fs';
import path from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { type FSWatcher, watch } from 'chokidar';

/** What is watched of a folder, and what becomes of its changes. */
export interface FolderEvents {
  /** Whether a file or folder at the top is watched, with all that it holds. */
  readonly isWatched: (name: string) => boolean;
  readonly onChange: (file: string, stats?: Stats) => void;
  /** The folder itself is gone: nothing more is reported, even if it returns at once. */
  readonly onGone: () => void;
}

/** Watches a folder that is there. Its name is a real one, without links. */
export async function watchFolder(
  root: string,
  { isWatched, onChange, onGone }: FolderEvents,
): Promise<FSWatcher> {
  const watcher = watch(root, {
    ignoreInitial: true,
    alwaysStat: true,
    ignored: (file) => {
      const [top = ''] = path.relative(root, file).split(path.sep);
      return top !== '' && !isWatched(top);
    },
    // A course is read without following links, and one may lead to a whole disk.
    followSymlinks: false,
  });
  watcher.on('all', (event, file, stats) => {
    if (event === 'unlinkDir' && path.relative(root, file) === '') onGone();
    onChange(file, stats);
  });
  watcher.on('error', () => onChange(root));
  // A folder that goes while it is being looked through may never be ready.
  await Promise.race([
    new Promise<void>((resolve) => watcher.on('ready', resolve)),
    wait(10_000, undefined, { ref: false }),
  ]);
  return watcher;
}
