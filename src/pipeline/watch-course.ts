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
  /** Settles when no file has changed for so long that what an editor was writing is written. */
  readonly settled: () => Promise<void>;
  /** Settles when the course is watched, or was not there. */
  readonly ready: Promise<void>;
  readonly close: () => Promise<void>;
}

/**
 * Reports every change to the files of a course, and goes on when the folder, or one in it, was
 * moved away and returns or another takes its place.
 * @param onChange is called once for changes that come together.
 * @param pace how often it is seen whether the folder is still there, in milliseconds.
 */
export function watchCourse(folder: string, onChange: () => void, pace = 1000): CourseWatch {
  let watcher: FSWatcher | undefined;
  /** The folder that is watched. */
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
    // The caller has just read what is there at first.
    if (first || closed) return;
    changes.add(folder);
    // What was saved just when the watch began is now and then not noticed: once more, when it surely stands.
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

/** Which folder stands there: another one of the same name is not the same. */
function identityOf(folder: string): Promise<string | undefined> {
  return stat(folder, { bigint: true }).then(
    ({ dev, ino }) => `${dev}:${ino}`,
    () => undefined,
  );
}
