import { mkdir, mkdtemp, rm, symlink } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

/**
 * Makes a new folder in which Astro may write. It writes to its root, to its working directory and
 * beside its dependencies; the author's folder and this package stay untouched because this folder
 * is all three.
 */
export async function makeWorkFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'linewright-'));
  const astro = createRequire(import.meta.url).resolve('astro/package.json');
  // A junction needs no privilege on Windows; elsewhere the kind is ignored.
  await symlink(dirname(dirname(astro)), join(folder, 'node_modules'), 'junction');
  await mkdir(join(folder, 'out'));
  return folder;
}

export async function removeWorkFolder(folder: string): Promise<void> {
  await rm(folder, { recursive: true, force: true, maxRetries: 3 });
}
