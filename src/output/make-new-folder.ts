import { cp, mkdir, rename, rmdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { errorCode } from './error-code.ts';
import { makeTemporaryFolder } from './temporary-folder.ts';

/**
 * Makes a folder that was not there, or was empty, whole or not at all: a signal on the way leaves nothing of it.
 * @param fill writes what it will hold into the folder that it is given.
 */
export async function makeNewFolder(
  folder: string,
  fill: (work: string) => Promise<void>,
): Promise<void> {
  const work = await makeTemporaryFolder();
  const whole = join(work.path, 'new');
  try {
    await mkdir(whole);
    await fill(whole);
    await mkdir(dirname(folder), { recursive: true });
    // An empty folder in its place is none to keep; a full one refuses.
    await rmdir(folder).catch((error: unknown) => {
      if (errorCode(error) !== 'ENOENT') throw error;
    });
    try {
      await rename(whole, folder);
    } catch (error) {
      // Temporary files may lie on another disk.
      if (errorCode(error) !== 'EXDEV') throw error;
      await cp(whole, folder, { recursive: true, errorOnExist: true, force: false });
    }
  } finally {
    await work.remove();
  }
}
