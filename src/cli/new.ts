import { cp, readdir, rename } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { NoCourseError } from '../read/index.ts';
import { exitCodes, stdout } from './console.ts';

const starter = fileURLToPath(new URL('../../content/starter', import.meta.url));

/** `linewright new`: a small course that builds, to start from. */
export async function makeNew(folder: string): Promise<number> {
  const entries = await readdir(folder).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return [];
    if (error.code === 'ENOTDIR') throw new NoCourseError(`${folder} is a file, not a folder.`);
    throw error;
  });
  if (entries.length > 0) {
    throw new NoCourseError(
      `The folder ${folder} is not empty: a new course needs a folder of its own.`,
    );
  }
  await cp(starter, folder, { recursive: true });
  // npm leaves files named .gitignore out of a package.
  await rename(path.join(folder, 'gitignore'), path.join(folder, '.gitignore'));
  stdout.print`A new course stands in ${folder}.\n\n`;
  stdout.print`  linewright dev ${folder}     shows it while you write\n`;
  stdout.print`  linewright check ${folder}   tells what is wrong\n`;
  stdout.print`  linewright build ${folder}   publishes it\n`;
  return exitCodes.clean;
}
