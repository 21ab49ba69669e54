import { createHash } from 'node:crypto';
import path from 'node:path';
import { codeHash, readPlainFile, sealLength, sealOf } from '../files/index.ts';
import { replaceFile } from '../output/index.ts';
import type { Keep } from '../site/index.ts';

/** In bytes: more than a book with all its pictures has. */
const largest = 500_000_000;

/**
 * Keeps what is made of a whole course in the cache, one file a course and kind, so that what is kept does
 * not grow: sealed with all that it depends on, written aside and moved into its place. A damaged file, or
 * one of another edition of the course or of this program, is as good as none.
 * @param cache folder of the user's cache.
 * @param edition of the course, as `courseEdition` has it.
 */
export function keepMade(cache: string, folder: string, edition: string): Keep {
  const course = createHash('sha256').update(path.resolve(folder)).digest('hex').slice(0, 16);
  return async (kind, inputs, make) => {
    const name = `made-${course}-${kind}`;
    const of = JSON.stringify([name, await codeHash(), edition, ...inputs]);
    const { bytes } = await readPlainFile(cache, name, largest).catch(() => nothing);
    const content = bytes.subarray(sealLength);
    if (bytes.length > sealLength && sealOf(of, content).equals(bytes.subarray(0, sealLength))) {
      return content;
    }
    const made = await make();
    // What cannot be kept is made again next time.
    await replaceFile(path.join(cache, name), Buffer.concat([sealOf(of, made), made])).catch(
      () => {},
    );
    return made;
  };
}

const nothing = { bytes: new Uint8Array() };
