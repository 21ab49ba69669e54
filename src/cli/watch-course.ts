import { realpath, stat } from 'node:fs/promises';
import path from 'node:path';
import { type FSWatcher, watch } from 'chokidar';

/** What a course is read from. */
const watched = new Set(['course.yaml', 'chapters', 'games', 'media', 'news']);

export interface CourseWatch {
  /** Settles when the course is watched, or was not there. */
  readonly ready: Promise<void>;
  readonly close: () => Promise<void>;
}

/**
 * Tells of every change to the files of a course, and goes on when the folder, or one in it, was
 * moved away and returns or another takes its place.
 * @param onChange is told once for changes that come together.
 * @param pace how often it is seen whether the folder is still there, in milliseconds.
 */
export function watchCourse(folder: string, onChange: () => void, pace = 1000): CourseWatch {
  let watcher: FSWatcher | undefined;
  let seen: string | undefined;
  let first = true;
  let closed = false;
  let timer: NodeJS.Timeout | undefined;

  const changed = () => {
    clearTimeout(timer);
    timer = setTimeout(onChange, 80);
  };

  /** Which folder stands there: another one of the same name is not the one that is watched. */
  const found = () =>
    stat(folder, { bigint: true }).then(
      ({ dev, ino }) => `${dev}:${ino}`,
      () => undefined,
    );

  const begin = async () => {
    const root = await realpath(folder);
    const own = (file: string) => {
      const [top = ''] = path.relative(root, file).split(path.sep);
      return top === '' || watched.has(top);
    };
    const fresh = watch(root, {
      ignoreInitial: true,
      ignored: (file) => !own(file),
      // A course is read without following links, and one may lead to a whole disk.
      followSymlinks: false,
    });
    fresh.on('all', (event, file) => {
      // What is told of a folder that was moved away ends with it, even if it returns at once.
      if (event === 'unlinkDir' && path.relative(root, file) === '') seen = undefined;
      changed();
    });
    fresh.on('error', changed);
    await new Promise<void>((resolve) => fresh.on('ready', resolve));
    return fresh;
  };

  const look = async () => {
    const now = await found();
    if (closed || now === seen) return;
    const before = watcher;
    watcher = undefined;
    await before?.close();
    seen = now;
    if (now !== undefined) watcher = await begin();
    // The caller has just read what is there at first.
    if (!first) changed();
  };

  let looking = Promise.resolve();
  const lookAgain = () => {
    looking = looking
      .then(look)
      .catch(() => {
        seen = undefined;
      })
      .finally(() => {
        first = false;
      });
  };
  lookAgain();
  const clock = setInterval(lookAgain, pace);
  return {
    ready: looking,
    async close() {
      closed = true;
      clearInterval(clock);
      clearTimeout(timer);
      await looking;
      await watcher?.close();
    },
  };
}
