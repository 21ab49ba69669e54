import { randomBytes } from 'node:crypto';
import { closeSync, mkdirSync, openSync, readSync, unlinkSync, writeSync } from 'node:fs';
import path from 'node:path';

/** Bytes that would lie in memory for long, in a file without a name, which is gone with the process. */
export interface Spill {
  /** @returns what gives the bytes again, until the spill is closed. */
  put(bytes: Uint8Array): () => Uint8Array;
  close(): void;
}

/** @param folder where the file is opened with the first bytes. Where that cannot be done, they stay in memory. */
export function openSpill(folder: string): Spill {
  let file: number | undefined;
  let end = 0;
  let isUsable = true;
  return {
    put(bytes) {
      if (!isUsable) return itself(bytes);
      const start = end;
      try {
        file ??= openUnnamed(folder);
        for (let done = 0; done < bytes.length; )
          done += writeSync(file, bytes, done, bytes.length - done, start + done);
      } catch {
        // The disk is full, or nothing can be written there.
        isUsable = false;
        return itself(bytes);
      }
      end += bytes.length;
      return reader(file, start, bytes.length);
    },
    close() {
      if (file !== undefined) closeSync(file);
      file = undefined;
      end = 0;
    },
  };
}

function openUnnamed(folder: string): number {
  mkdirSync(folder, { recursive: true });
  const name = path.join(folder, `spill.${randomBytes(6).toString('hex')}.linewright-new`);
  const file = openSync(name, 'wx+', 0o600);
  unlinkSync(name);
  return file;
}

// Functions of their own, whose scopes hold no bytes that they do not give.
const itself = (bytes: Uint8Array) => () => bytes;
const reader = (file: number, start: number, length: number) => () => readAt(file, start, length);

function readAt(file: number, start: number, length: number): Uint8Array {
  const bytes = new Uint8Array(length);
  for (let done = 0; done < length; ) {
    const read = readSync(file, bytes, done, length - done, start + done);
    if (read === 0) throw new Error('a file of this process has lost what was written to it');
    done += read;
  }
  return bytes;
}
