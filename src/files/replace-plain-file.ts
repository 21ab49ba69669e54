import { randomBytes } from 'node:crypto';
import { open, realpath, rename, rm } from 'node:fs/promises';
import path from 'node:path';
import { isAt, openPlainFile } from './open-plain-file.ts';
import { FileRefusedError, refusals } from './refusals.ts';

/**
 * Puts new content into a plain file of a folder, whole or not at all; who may read and write it
 * stays.
 * @param before what is there; where something else is by now, nothing is written.
 * @throws FileRefusedError as `openPlainFile`, and for a file that changed.
 */
export async function replacePlainFile(
  folder: string,
  file: string,
  before: Uint8Array,
  after: Uint8Array,
): Promise<void> {
  const full = path.join(await realpath(folder), ...file.split('/'));
  const aside = `${full}.${randomBytes(6).toString('hex')}.linewright-new`;
  const old = await openPlainFile(folder, file);
  try {
    const { mode } = await old.stat();
    if (!(await old.readFile()).equals(before)) {
      throw new FileRefusedError(file, refusals.changed);
    }
    const fresh = await open(aside, 'wx', mode);
    try {
      if (!(await isAt(fresh, aside))) throw new FileRefusedError(file, refusals.link);
      // What it was opened with is less what the process's mask takes away.
      await fresh.chmod(mode);
      await fresh.writeFile(after);
    } finally {
      await fresh.close();
    }
    await rename(aside, full);
  } finally {
    await old.close();
    await rm(aside, { force: true });
  }
}
