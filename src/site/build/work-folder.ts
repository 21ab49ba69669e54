import { mkdir, symlink } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { makeTemporaryFolder, type TemporaryFolder } from '../../output/index.ts';

/**
 * Makes a new folder in which Astro may write. It writes to its root, to its working directory and
 * beside its dependencies; the author's folder and this package stay untouched because this folder
 * is all three.
 */
export async function makeWorkFolder(): Promise<TemporaryFolder> {
  const folder = await makeTemporaryFolder();
  const astro = createRequire(import.meta.url).resolve('astro/package.json');
  // A junction needs no privilege on Windows; elsewhere the kind is ignored.
  await symlink(dirname(dirname(astro)), join(folder.path, 'node_modules'), 'junction');
  await mkdir(join(folder.path, 'out'));
  return folder;
}
