import { readdir, rm, stat } from 'node:fs/promises';
import path from 'node:path';

/** Removes the oldest files and folders of a folder whose names begin alike, but for so many. */
export async function dropOldest(folder: string, beginning: string, kept: number): Promise<void> {
  const names = (await readdir(folder)).filter((name) => name.startsWith(beginning));
  if (names.length <= kept) return;
  const ages = await Promise.all(
    names.map(async (name) => ({ name, time: (await stat(path.join(folder, name))).mtimeMs })),
  );
  ages.sort((a, b) => b.time - a.time);
  for (const { name } of ages.slice(kept)) {
    await rm(path.join(folder, name), { recursive: true, force: true });
  }
}
