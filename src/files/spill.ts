import { randomBytes } from 'node:crypto';
import { closeSync, mkdirSync, openSync, readSync, unlinkSync, writeSync } from 'node:fs';
import path from 'node:path';

/** Bytes that would lie in memory for long, in a file without a name, which is gone with the process. */
export interface Spill {
  /** The bytes can be read until the spill is closed. */
  put(bytes: Uint8Array): SpilledBytes;
  close(): void;
}

export interface SpilledBytes {
  readonly length: number;
  /** Gives the bytes from one offset to another. */
  read(start: number, end: number): Buffer;
  /** Reads all of them into a buffer. @param at the offset in it. */
  copy(into: Buffer, at: number): void;
}

/** @param folder where the file is opened with the first bytes. Where that cannot be done, they stay in memory. */
export function openSpill(folder: string): Spill {
  let file: number | undefined;
  let end = 0;
  let isUsable = true;
  return {
    put(bytes) {
      if (!isUsable) return inMemory(bytes);
      const start = end;
      try {
        file ??= openUnnamed(folder);
        for (let done = 0; done < bytes.length; )
          done += writeSync(file, bytes, done, bytes.length - done, start + done);
      } catch {
        // The disk is full, or nothing can be written there.
        isUsable = false;
        return inMemory(bytes);
      }
      end += bytes.length;
      return onDisk(file, start, bytes.length);
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

export function inMemory(bytes: Uint8Array): SpilledBytes {
  const whole = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return {
    length: whole.length,
    read: (start, end) => whole.subarray(start, end),
    copy: (into, at) => void whole.copy(into, at),
  };
}

function onDisk(file: number, begin: number, length: number): SpilledBytes {
  return {
    length,
    read(start, end) {
      const bytes = Buffer.allocUnsafeSlow(end - start);
      readInto(file, bytes, begin + start);
      return bytes;
    },
    copy: (into, at) => readInto(file, into.subarray(at, at + length), begin),
  };
}

function readInto(file: number, bytes: Buffer, start: number): void {
  for (let done = 0; done < bytes.length; ) {
    const read = readSync(file, bytes, done, bytes.length - done, start + done);
    if (read === 0) throw new Error('a file of this process has lost what was written to it');
    done += read;
  }
}
