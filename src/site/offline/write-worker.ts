import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { packageRoot } from '../build/package-root.ts';
import { type KeptFiles, type KnownFile, keptFiles } from './kept-files.ts';

/** Name of the worker in a site: at its root, since a worker serves only what lies below it. */
export const workerFile = 'offline.js';

/** Writes the service worker with the list of all files; call it last. */
export async function writeWorker(
  folder: string,
  files: readonly string[],
  known?: ReadonlyMap<string, KnownFile>,
): Promise<KeptFiles> {
  const kept = await keptFiles(folder, files, known);
  const script = await readFile(join(packageRoot, 'dist', 'offline', workerFile), 'utf8');
  const list = `self.courseFiles=${JSON.stringify(kept.hashes)};\n`;
  await writeFile(join(folder, workerFile), list + script);
  return kept;
}
