import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';

/** Writes a file whole or not at all: until it is written, what stood there stands. */
export async function replaceFile(file: string, content: string | Uint8Array): Promise<void> {
  await mkdir(path.dirname(file), { recursive: true });
  const fresh = `${file}.linewright-new`;
  try {
    await writeFile(fresh, content);
    await rename(fresh, file);
  } finally {
    await rm(fresh, { force: true });
  }
}
