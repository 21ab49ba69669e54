import { readdir } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';

/** Every plain file below a folder, as paths from it with `/`, sorted. Links are not followed. */
export async function listFiles(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll(sep, '/'))
    .sort();
}
