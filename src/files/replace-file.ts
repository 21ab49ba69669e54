import { randomBytes } from 'node:crypto';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';

/**
 * Writes a file whole or not at all: until it is written, what stood there stands.
 * @param content or its pieces, one behind the other.
 */
export async function replaceFile(
  file: string,
  content: string | Uint8Array | Iterable<Uint8Array>,
): Promise<void> {
  await mkdir(path.dirname(file), { recursive: true });
  // A name that nobody could have put a link at, and that no other run has.
  const fresh = `${file}.${randomBytes(6).toString('hex')}.linewright-new`;
  try {
    await writeFile(fresh, content, { flag: 'wx' });
    await rename(fresh, file);
  } finally {
    await rm(fresh, { force: true });
  }
}
