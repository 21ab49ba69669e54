import type { FileHandle } from 'node:fs/promises';
import { openPlainFile } from './open-plain-file.ts';
import { FileRefusedError, whyRefused } from './refusals.ts';

export interface PlainFileBytes {
  readonly bytes: Uint8Array;
  /** Of the file; more than `bytes` has where the limit cut it short. */
  readonly size: number;
}

/**
 * Reads a plain file in a folder.
 * @param limit so many bytes and one more are read at most, however the file may grow.
 * @throws FileRefusedError as `openPlainFile`.
 */
export async function readPlainFile(
  folder: string,
  file: string,
  limit: number,
): Promise<PlainFileBytes> {
  const handle = await openPlainFile(folder, file);
  try {
    const { size } = await handle.stat();
    if (size > limit) return { bytes: new Uint8Array(0), size };
    const bytes = await readUpTo(handle, limit + 1, size);
    return { bytes, size: bytes.length };
  } catch (error) {
    throw new FileRefusedError(file, whyRefused(error));
  } finally {
    await handle.close();
  }
}

/**
 * Reads an open file to its end, or so many bytes of it.
 * @param expected its size as it was just told; it may have changed.
 */
export async function readUpTo(
  handle: FileHandle,
  most: number,
  expected = 1 << 16,
): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  let length = 0;
  while (length < most) {
    // One byte more than is left shows the end at once: a course may have a thousand files.
    const room = length < expected ? expected - length + 1 : 1 << 16;
    const piece = Buffer.allocUnsafe(Math.min(most - length, room));
    const { bytesRead } = await handle.read(piece, 0, piece.length, null);
    pieces.push(piece.subarray(0, bytesRead));
    length += bytesRead;
    if (bytesRead < piece.length) break;
  }
  return pieces.length === 1 && pieces[0] !== undefined ? pieces[0] : Buffer.concat(pieces);
}
