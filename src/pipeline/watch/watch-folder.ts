import type { Stats } from 'node:fs';
import path from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { type FSWatcher, watch } from 'chokidar';

/** What to watch in a folder, and whom to tell. */
export interface FolderEvents {
  /** Whether to watch a file or folder at the top, with all in it. */
  readonly isWatched: (name: string) => boolean;
  readonly onChange: (file: string, stats?: Stats) => void;
  /** The folder itself is gone; nothing follows, even if it returns. */
  readonly onGone: () => void;
}

/** Watches a folder. @param folder an existing real path, without links. */
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
    // Courses are read without following links, and one may lead to a whole disk.
    followSymlinks: false,
  });
  watcher.on('all', (event, file, stats) => {
    if (event === 'unlinkDir' && path.relative(root, file) === '') onGone();
    onChange(file, stats);
  });
  watcher.on('error', () => onChange(root));
  // A folder removed during the first scan may never be ready.
  await Promise.race([
    new Promise<void>((resolve) => watcher.on('ready', resolve)),
    wait(10_000, undefined, { ref: false }),
  ]);
  return watcher;
}
