import { realpath, stat } from 'node:fs/promises';
import type { FSWatcher } from 'chokidar';
import { gatherChanges } from './watch/gather-changes.ts';
import { lookAgain } from './watch/look-again.ts';
import { watchFolder } from './watch/watch-folder.ts';

/** What a course is read from. */
const watched = new Set([
  'course.yaml',
  'theme.css',
  'chapters',
  'pages',
  'games',
  'media',
  'news',
  'facts',
  'translations',
]);

export interface CourseWatch {
  /** Resolves when editors have finished writing. */
  readonly settled: () => Promise<void>;
  /** Resolves when the course is watched, or was not there. */
  readonly ready: Promise<void>;
  readonly close: () => Promise<void>;
}

/**
 * Reports changes to the files of a course, also after its folder was moved away and came back or was replaced.
 * @param onChange called once for changes that come together.
 * @param pace milliseconds between looks whether the folder is still there.
 */
export function watchCourse(folder: string, onChange: () => void, pace = 1000): CourseWatch {
  let watcher: FSWatcher | undefined;
  let seen: string | undefined;
  let first = true;
  let closed = false;
  let later: NodeJS.Timeout | undefined;
  const changes = gatherChanges(onChange);
  const secondLooks = lookAgain(changes.add);

  const begin = async () =>
    watchFolder(await realpath(folder), {
      isWatched: (name) => watched.has(name),
      onChange(file, stats) {
        changes.add(file, stats);
        if (stats?.isFile()) secondLooks.plan(file, stats);
      },
      onGone() {
        seen = undefined;
      },
    });

  const look = async () => {
    const now = await identityOf(folder);
    if (closed || now === seen) return;
    const before = watcher;
    watcher = undefined;
    await before?.close();
    seen = now;
    if (now !== undefined) watcher = await begin();
    // The caller has just read what is there.
    if (first || closed) return;
    changes.add(folder);
    // The watcher may miss what is saved while it starts, so report once more.
    clearTimeout(later);
    later = setTimeout(() => changes.add(folder), pace);
  };

  let looking = Promise.resolve();
  const lookWhenDone = () => {
    looking = looking
      .then(look)
      .catch(() => {
        seen = undefined;
      })
      .finally(() => {
        first = false;
      });
  };
  lookWhenDone();
  const clock = setInterval(lookWhenDone, pace);
  return {
    ready: looking,
    settled: changes.settled,
    async close() {
      closed = true;
      clearInterval(clock);
      clearTimeout(later);
      changes.close();
      secondLooks.close();
      await looking;
      await watcher?.close();
    },
  };
}

/** Identity of the folder: another of the same name is another. */
function identityOf(folder: string): Promise<string | undefined> {
  return stat(folder, { bigint: true }).then(
    ({ dev, ino }) => `${dev}:${ino}`,
    () => undefined,
  );
}
