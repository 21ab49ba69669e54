import { createHash } from 'node:crypto';
import path from 'node:path';
import type { CourseEntry } from '../../check/index.ts';
import { codeHash, readSealed, writeSealed } from '../../files/index.ts';
import { findFiles } from '../../read/index.ts';
import { createWorkspace, loadKept } from '../../workspace/index.ts';
import { cacheFolder } from '../cache-folder.ts';
import { courseEdition } from '../course-edition.ts';

/** Bytes: a hundred thousand names, and as many positions with advice. */
const largest = 50_000_000;

/**
 * What other courses of a shelf may know of the course in a folder: as kept, if it is of the same edition, else read and
 * played now. Checks nothing.
 */
export async function entryOf(folder: string): Promise<CourseEntry> {
  const files = await findFiles(folder, { lookIntoMedia: false });
  const course = path.resolve(folder);
  const keep = await entryKeeper(course, courseEdition(files));
  const kept = await keep.read();
  if (kept) return kept;
  const workspace = createWorkspace({ kept: await loadKept(cacheFolder(), course) });
  const entry = workspace.update(files).entry();
  await keep.write(entry);
  return entry;
}

async function entryKeeper(course: string, edition: string) {
  const name = `entry-${createHash('sha256').update(course).digest('hex').slice(0, 16)}.json`;
  const sealedFor = JSON.stringify([name, await codeHash(), edition]);
  return {
    async read(): Promise<CourseEntry | undefined> {
      const kept = await readSealed(cacheFolder(), name, { sealedFor, largest });
      return kept && (JSON.parse(kept.toString('utf8')) as CourseEntry);
    },
    async write(entry: CourseEntry): Promise<void> {
      const content = JSON.stringify(entry);
      // What could not be kept is made again next time.
      await writeSealed(cacheFolder(), name, { sealedFor, content }).catch(() => {});
    },
  };
}
