import { lstatSync } from 'node:fs';
import { join } from 'node:path';

/** Files as they stand: size, time of the last change and number in the file system, by path. */
export type FileStamps = Readonly<
  Record<string, readonly [size: number, time: number, inode: number]>
>;

/** @returns nothing where one of them is no plain file. */
export function takeStamps(folder: string, paths: Iterable<string>): FileStamps | undefined {
  const noted: Record<string, FileStamps[string]> = {};
  for (const path of paths) {
    const found = lstatSync(join(folder, path), { throwIfNoEntry: false });
    if (!found?.isFile()) return undefined;
    noted[path] = [found.size, found.mtimeMs, found.ino];
  }
  return noted;
}

/** Whether all of them stand as they were noted. */
export function areUnchanged(folder: string, noted: FileStamps): boolean {
  return Object.entries(noted).every(([path, [size, time, inode]]) => {
    const found = lstatSync(join(folder, path), { throwIfNoEntry: false });
    return found?.isFile() && found.size === size && found.mtimeMs === time && found.ino === inode;
  });
}
