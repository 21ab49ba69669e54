import { createWriteStream } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { openPlainFile } from './open-plain-file.ts';

/**
 * Copies a plain file of a folder, as long as it was when it was opened.
 * @throws FileRefusedError as `openPlainFile`.
 */
export async function copyPlainFile(folder: string, file: string, to: string): Promise<void> {
  const handle = await openPlainFile(folder, file);
  try {
    const { size } = await handle.stat();
    await mkdir(path.dirname(to), { recursive: true });
    const content =
      size === 0
        ? Readable.from([])
        : handle.createReadStream({ start: 0, end: size - 1, autoClose: false });
    await pipeline(content, createWriteStream(to, { flags: 'wx' }));
  } finally {
    await handle.close();
  }
}
