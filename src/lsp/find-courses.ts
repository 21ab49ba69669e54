import { readdir } from 'node:fs/promises';
import path from 'node:path';
import { isTranslation } from './addresses.ts';

/** Limits of the search, since an editor may be open on a whole home folder. */
const mostFolders = 300;
const deepest = 3;

/** The courses in a folder of a client, in it or below it. */
export async function findCourses(root: string): Promise<string[]> {
  const found: string[] = [];
  const open = [{ folder: root, depth: 0 }];
  for (let seen = 0; seen < mostFolders; seen += 1) {
    const next = open.shift();
    if (!next) break;
    const entries = await readdir(next.folder, { withFileTypes: true }).catch(() => []);
    if (entries.some((entry) => entry.name === 'course.yaml') && !isTranslation(next.folder)) {
      found.push(next.folder);
      continue;
    }
    if (next.depth === deepest) continue;
    for (const entry of entries) {
      if (!entry.isDirectory() || /^\.|^node_modules$/.test(entry.name)) continue;
      open.push({ folder: path.join(next.folder, entry.name), depth: next.depth + 1 });
    }
  }
  return found;
}
