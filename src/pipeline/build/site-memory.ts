import path from 'node:path';
import { codeHash, dropOldest, readSealed, writeSealed } from '../../files/index.ts';
import { printPart } from '../../render/index.ts';
import type { SiteMemory } from '../../site/index.ts';
import { comparesFresh } from '../../workspace/index.ts';

/** Bytes: what is recalled of a course is small. */
const largest = 50_000_000;

/** Courses that are remembered. */
const mostCourses = 50;

/** The memory of a course, saved at the end of a build. */
export interface KeptMemory extends SiteMemory {
  save(): Promise<void>;
}

/**
 * Opens what an earlier build recalls of a course; nothing if the course had another face or the program was another
 * edition.
 * @param cache folder of the user's cache.
 */
export async function openMemory(
  cache: string,
  folder: string,
  { face, print }: Pick<SiteMemory, 'face' | 'print'>,
): Promise<KeptMemory> {
  const course = printPart(path.resolve(folder));
  const name = `recalled-${course}.json`;
  const sealedFor = JSON.stringify([name, await codeHash(), face]);
  const read = await readSealed(cache, name, { sealedFor, largest });
  const before = new Map<string, string>(read && JSON.parse(read.toString('utf8')));
  const now = new Map<string, string>();
  return {
    face,
    print,
    recall(name, make) {
      const kept = before.get(name);
      if (kept !== undefined && comparesFresh() && kept !== JSON.stringify(make())) {
        throw new Error(`what was recalled as “${name}” is not what is made now`);
      }
      const value = kept ?? JSON.stringify(make());
      now.set(name, value);
      // What is made now goes through JSON too, so that kept and fresh are alike.
      return JSON.parse(value);
    },
    async save() {
      if ([...now.keys()].every((name) => before.has(name))) return;
      const content = JSON.stringify([...before, ...now]);
      await writeSealed(cache, name, { sealedFor, content })
        .then(() => dropOldest(cache, 'recalled-', mostCourses))
        // What could not be kept is made again next time.
        .catch(() => {});
    },
  };
}
