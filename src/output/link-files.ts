import { constants, copyFileSync, linkSync, mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';

/**
 * Gives the folder `to` files of the folder `from`, as second names of the same files, else as copies: not every file
 * system has second names. One after the other and at once, since thousands of promises cost more than the work.
 * @param paths relative to both, with `/`; nothing stands there in `to`.
 * @throws what the system says, such as of a file that is there no more.
 */
export function linkFiles(from: string, to: string, paths: Iterable<string>): void {
  const folders = new Set<string>();
  for (const path of paths) {
    const [source, target] = [join(from, path), join(to, path)];
    const folder = dirname(target);
    if (!folders.has(folder)) mkdirSync(folder, { recursive: true });
    folders.add(folder);
    try {
      linkSync(source, target);
    } catch {
      copyFileSync(source, target, constants.COPYFILE_EXCL);
    }
  }
}
