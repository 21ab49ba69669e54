import { constants } from 'node:fs';
import { type FileHandle, lstat, open, readlink, realpath } from 'node:fs/promises';
import path from 'node:path';
import { FileRefusedError, refusalOf, refusals, whyRefused } from './refusals.ts';

/** Windows has none of these but the first; there `lstat` and `isAt` say what a link is. */
const { O_RDONLY, O_NOFOLLOW = 0, O_NONBLOCK = 0, O_NOCTTY = 0 } = constants;
/** Opens neither a link nor waits for a pipe. */
export const plainFlags = O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_NOCTTY;

/**
 * An editor saves by putting a new file in the place of the old: that may come in between, and on a busy machine several
 * times in turn.
 */
const attempts = 50;

/**
 * Opens a plain file in a folder for reading. The folder itself may be a link; nothing below it may.
 * What is promised holds for the handle, whatever stands at the path by then.
 * @param file its path in the folder, with `/`.
 * @throws FileRefusedError for a link, a folder, a pipe, a socket and a device, without waiting for
 * any of them, and for what the system does not let us read.
 */
export async function openPlainFile(folder: string, file: string): Promise<FileHandle> {
  try {
    for (let attempt = 0; attempt < attempts; attempt++) {
      const full = path.join(await realpath(folder), ...file.split('/'));
      // Before it is opened too: opening a device may set it to work.
      refuse(file, await lstat(full));
      const handle = await open(full, plainFlags);
      try {
        refuse(file, await handle.stat());
        if (await isAt(handle, full)) return handle;
        if (!isSame(await realpath(full), full)) throw new FileRefusedError(file, refusals.link);
      } catch (error) {
        await handle.close();
        throw error;
      }
      await handle.close();
    }
  } catch (error) {
    throw new FileRefusedError(file, whyRefused(error));
  }
  throw new FileRefusedError(file, refusals.exchanged);
}

function refuse(file: string, kinds: Parameters<typeof refusalOf>[0]): void {
  const refusal = refusalOf(kinds);
  if (refusal) throw new FileRefusedError(file, refusal);
}

/**
 * Whether an open file is the one at a path on which there is no link. Linux tells a handle's own
 * path; elsewhere the path is resolved anew and must lead to the same file.
 */
export async function isAt(handle: FileHandle, full: string): Promise<boolean> {
  const own = await readlink(`/proc/self/fd/${handle.fd}`).catch(() => undefined);
  if (own !== undefined) return isSame(own, full);
  if (!isSame(await realpath(full), full)) return false;
  const [opened, found] = await Promise.all([
    handle.stat({ bigint: true }),
    lstat(full, { bigint: true }),
  ]);
  return opened.dev === found.dev && opened.ino === found.ino;
}

/** Some file systems give a name back in another case or normal form than it was asked for. */
function isSame(a: string, b: string): boolean {
  const plain = (path: string) => path.normalize().toLowerCase();
  return plain(a) === plain(b);
}
