import path from 'node:path';
import { codeHash, readSealed, writeSealed } from '../../files/index.ts';
import { printPart } from '../../render/index.ts';
import type { Keep } from '../../site/index.ts';

/** Bytes: more than a book with all its pictures. */
const largest = 500_000_000;

/**
 * Keeps what is made of a whole course in the cache: one file a course and kind, so that the cache does not grow. A file
 * that is damaged, or of another edition of the course or of this program, counts as missing.
 * @param cache folder of the user's cache.
 * @param edition of the course, as `courseEdition` has it.
 */
export function keepMade(cache: string, folder: string, edition: string): Keep {
  const course = printPart(path.resolve(folder));
  return async (kind, inputs, make) => {
    const name = `made-${course}-${kind}`;
    const sealedFor = JSON.stringify([name, await codeHash(), edition, ...inputs]);
    const kept = await readSealed(cache, name, { sealedFor, largest });
    if (kept) return kept;
    const made = await make();
    // What could not be kept is made again next time.
    await writeSealed(cache, name, { sealedFor, content: made }).catch(() => {});
    return made;
  };
}
