import { lstat, readdir, realpath } from 'node:fs/promises';
import path from 'node:path';
import { FileRefusedError, type Refusal, refusalOf, refusals, whyRefused } from './refusals.ts';

export interface ListedFile {
  readonly name: string;
  readonly isFolder: boolean;
  /** Why it is not read; absent for plain files and for folders. */
  readonly refusal?: Refusal;
}

/**
 * Lists a folder of a course, in the order of the names.
 * @param folder its path in the course, with `/`.
 * @throws FileRefusedError where it is a link, no folder, or not to be read.
 */
export async function listFolder(course: string, folder: string): Promise<ListedFile[]> {
  try {
    const full = path.join(await realpath(course), ...folder.split('/'));
    const found = await lstat(full);
    if (!found.isDirectory()) {
      throw new FileRefusedError(folder, refusalOf(found) ?? refusals.file);
    }
    const entries = await readdir(full, { withFileTypes: true });
    return entries
      .map((entry) => {
        const { name } = entry;
        if (entry.isDirectory()) return { name, isFolder: true };
        // What stands for bytes that are no text: the file cannot be opened by this name.
        const refusal = refusalOf(entry) ?? (name.includes('\uFFFD') ? refusals.name : undefined);
        return { name, isFolder: false, ...(refusal && { refusal }) };
      })
      .sort((a, b) => (a.name < b.name ? -1 : 1));
  } catch (error) {
    throw new FileRefusedError(folder, whyRefused(error));
  }
}
