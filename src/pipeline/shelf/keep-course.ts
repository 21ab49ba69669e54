import { createHash } from 'node:crypto';
import { lstat, readdir } from 'node:fs/promises';
import path from 'node:path';
import { codeHash, dropOldest, readSealed, writeSealed } from '../../files/index.ts';
import type { CourseFiles } from '../../read/index.ts';
import { comparesFresh } from '../../workspace/index.ts';
import { cacheFolder } from '../cache-folder.ts';
import { today } from '../told-date.ts';

/** Bytes: a hundred thousand names, and as many positions with advice. */
const largest = 50_000_000;

/** Courses kept, of all shelves. */
const mostKept = 200;

/** Keeps what was made of a course until the course changes, so that it need not even be opened. */
export interface CourseKeeper<Value> {
  read(): Promise<Value | undefined>;
  write(value: Value): Promise<void>;
}

/**
 * @param kind names it in the cache.
 * @param files all that the course is read from.
 * @param inputs what it depends on beside those, this program's code and the day, which judgements are held against.
 */
export async function keepCourse<Value>(
  kind: string,
  folder: string,
  files: CourseFiles,
  inputs: readonly unknown[] = [],
): Promise<CourseKeeper<Value>> {
  const course = path.resolve(folder);
  const beginning = 'shelved-';
  const name = `${beginning}${kind}-${hashOf(course).slice(0, 16)}.json`;
  const beside = [...files.media, ...(await listBeside(course))];
  const stamps = await Promise.all(beside.map((file) => stamp(path.join(course, file))));
  const print = hashOf(JSON.stringify([files, beside, stamps, inputs, today()], asData));
  const sealedFor = JSON.stringify([name, await codeHash(), print]);
  return {
    async read() {
      if (comparesFresh()) return undefined;
      const kept = await readSealed(cacheFolder(), name, { sealedFor, largest });
      return kept && (JSON.parse(kept.toString('utf8')) as Value);
    },
    async write(value) {
      const content = JSON.stringify(value);
      await writeSealed(cacheFolder(), name, { sealedFor, content })
        .then(() => dropOldest(cacheFolder(), beginning, mostKept))
        // What could not be kept is made again next time.
        .catch(() => {});
    },
  };
}

/** Names in the course's folder and in that of its own rules. */
async function listBeside(course: string): Promise<string[]> {
  const list = async (folder: string) => {
    const entries = await readdir(path.join(course, folder), { withFileTypes: true }).catch(
      () => [],
    );
    return entries.flatMap((entry) => (entry.isFile() ? [path.join(folder, entry.name)] : []));
  };
  return [...(await list('')), ...(await list('rules'))].sort();
}

/** JSON has neither maps nor sets. */
function asData(_key: string, value: unknown): unknown {
  return value instanceof Map || value instanceof Set ? [...value] : value;
}

/** When a file was changed, and its size. */
async function stamp(file: string): Promise<readonly number[] | undefined> {
  const found = await lstat(file).catch(() => undefined);
  return found && [found.size, found.mtimeMs, found.ino];
}

function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
