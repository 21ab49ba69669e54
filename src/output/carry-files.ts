import { constants } from 'node:fs';
import {
  chmod,
  copyFile,
  link,
  lstat,
  mkdir,
  readdir,
  readFile,
  readlink,
  symlink,
} from 'node:fs/promises';
import { dirname, join } from 'node:path/posix';
import { errorCode, ignoreMissing } from './error-code.ts';
import { type Marker, markerFile } from './marker.ts';
import { OutputError } from './output-error.ts';

/**
 * Gives the folder `to` all that `from` holds beside what an earlier run wrote there: what the host
 * keeps, such as `.git` or `CNAME`, and what someone put there by hand. Files come as second names of
 * the same file, else as copies, so at every moment each of the two folders has them.
 * @returns the paths of the files and links that were carried, with `/`, sorted.
 * @throws OutputError where something else of that name stands in `to`; `from` is as it was.
 */
export async function carryFiles(from: string, to: string, marker: Marker): Promise<string[]> {
  const carried: string[] = [];
  const ours = foldersOf(marker);
  const carry = async (path: string): Promise<void> => {
    if (path === markerFile || marker.files?.has(path)) return;
    const source = join(from, path);
    const target = join(to, path);
    const found = await lstat(source);
    if (found.isDirectory()) {
      const names = await readdir(source);
      // A folder that a run made goes with it, unless something else lies in it.
      if (!ours.has(path)) await placeFolder(source, target, found.mode);
      for (const name of names) await carry(`${path}/${name}`);
      return;
    }
    if (!found.isFile() && !found.isSymbolicLink()) {
      throw new OutputError(
        `${source} is neither a file nor a folder, and cannot be kept`,
        'move it out of the folder',
      );
    }
    try {
      await mkdir(dirname(target), { recursive: true });
      if (found.isFile()) await linkOrCopy(source, target);
      else await symlink(await readlink(source), target);
      carried.push(path);
    } catch (error) {
      if (!isInTheWay(error)) throw error;
      // A marker without a list cannot tell: what is made anew was most likely made before.
      if (marker.files !== undefined && !(await isSame(source, target))) throw inTheWay(source);
    }
  };
  for (const name of await readdir(from)) await carry(name);
  return carried.sort();
}

/** Every folder that holds a file of the list. */
function foldersOf({ files }: Marker): ReadonlySet<string> {
  const folders = new Set<string>();
  for (const file of files ?? []) {
    for (let folder = dirname(file); folder !== '.' && folder !== '/'; folder = dirname(folder)) {
      folders.add(folder);
    }
  }
  return folders;
}

async function placeFolder(source: string, target: string, mode: number): Promise<void> {
  try {
    await mkdir(target, { recursive: true });
  } catch (error) {
    throw isInTheWay(error) ? inTheWay(source) : error;
  }
  await chmod(target, mode);
}

/** Not every file system has second names, and where one is refused a copy does as well. */
async function linkOrCopy(source: string, target: string): Promise<void> {
  try {
    await link(source, target);
  } catch (error) {
    if (isInTheWay(error)) throw error;
    await copyFile(source, target, constants.COPYFILE_EXCL);
  }
}

/** Whether a name could not be made because something else has it, or a file has a folder's. */
function isInTheWay(error: unknown): boolean {
  return ['EEXIST', 'ENOTDIR'].includes(errorCode(error));
}

function inTheWay(source: string): OutputError {
  return new OutputError(
    `${source} was written by no build, and the new one makes something of that name`,
    'move it out of the folder, or give it another name',
  );
}

async function isSame(one: string, other: string): Promise<boolean> {
  const [a, b] = await Promise.all([lstat(one), lstat(other).catch(ignoreMissing)]);
  if (a.isSymbolicLink()) return (await readlink(one)) === (await readlink(other).catch(() => ''));
  if (!a.isFile() || !b?.isFile() || a.size !== b.size) return false;
  return (await readFile(one)).equals(await readFile(other));
}
