import type { Stats } from 'node:fs';
import { realpath, stat } from 'node:fs/promises';
import path from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { type FSWatcher, watch } from 'chokidar';

/** What a course is read from. */
const watched = new Set(['course.yaml', 'chapters', 'games', 'media', 'news']);

/** In milliseconds: changes that come as close together as this are one. */
const together = 15;
/** In milliseconds: the watcher drops what comes sooner than 50 after another change to the same file. */
const dropping = 60;
/** An editor that empties a file before it writes it has written it after this time. */
const writing = 100;

export interface CourseWatch {
  /** Settles when no file has changed for so long that what an editor was writing is written. */
  readonly settled: () => Promise<void>;
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
  let later: NodeJS.Timeout | undefined;
  const lookingAgain = new Map<string, NodeJS.Timeout>();

  /** Files that were empty when they changed last, and folders, which are filled or watched only now. */
  const unfinished = new Set<string>();
  let last = Number.NEGATIVE_INFINITY;

  const changed = (file = folder, stats?: Stats) => {
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
  };

  /** Looks at a file once more when the watcher may have dropped a change to it. */
  const lookAgainAt = (file: string, { mtimeMs, size }: Stats) => {
    clearTimeout(lookingAgain.get(file));
    const timer = setTimeout(async () => {
      lookingAgain.delete(file);
      const now = await stat(file).catch(() => undefined);
      if (closed || !now || (now.mtimeMs === mtimeMs && now.size === size)) return;
      changed(file, now);
      lookAgainAt(file, now);
    }, dropping);
    lookingAgain.set(file, timer);
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
      alwaysStat: true,
      ignored: (file) => !own(file),
      // A course is read without following links, and one may lead to a whole disk.
      followSymlinks: false,
    });
    fresh.on('all', (event, file, stats) => {
      // What is told of a folder that was moved away ends with it, even if it returns at once.
      if (event === 'unlinkDir' && path.relative(root, file) === '') seen = undefined;
      changed(file, stats);
      if (stats?.isFile()) lookAgainAt(file, stats);
    });
    fresh.on('error', () => changed());
    // A folder that goes while it is being looked through may never be ready.
    await Promise.race([
      new Promise<void>((resolve) => fresh.on('ready', resolve)),
      wait(10_000, undefined, { ref: false }),
    ]);
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
    if (first) return;
    changed();
    // What was saved just when the watch began is now and then not noticed: once more, when it surely stands.
    clearTimeout(later);
    later = setTimeout(() => changed(), pace);
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
    async settled() {
      const rest = () => last + writing - performance.now();
      while (rest() > 0) await wait(rest());
    },
    async close() {
      closed = true;
      clearInterval(clock);
      clearTimeout(timer);
      clearTimeout(later);
      for (const timer of lookingAgain.values()) clearTimeout(timer);
      await looking;
      await watcher?.close();
    },
  };
}
