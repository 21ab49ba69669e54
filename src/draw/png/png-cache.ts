import { createHash, randomUUID } from 'node:crypto';
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { plainFlags, sealLength, sealOf } from '../../files/index.ts';
import { encoderVersion } from './encode-png.ts';
import { type PngJob, pngWidth } from './png.ts';

export interface PngCache {
  /** The finished image, or undefined if there is none or the file is damaged. */
  read(job: PngJob): Promise<Uint8Array | undefined>;
  /** Keeps an image. That it cannot be kept is no error: it is drawn again next time. */
  write(job: PngJob, png: Uint8Array): Promise<void>;
}

/** In bytes: far more than a picture has, and what is larger is none. */
const largest = 32_000_000;

/**
 * A folder of images named by the hash of what they show, made if it is missing. Behind each image
 * stands a seal of its name and its bytes, so that a damaged file, and a whole image that came under
 * another one's name, is no entry.
 * @param secret of the seals, as `sealOf` has it.
 */
export async function pngCache(folder: string, secret?: string): Promise<PngCache> {
  await mkdir(folder, { recursive: true }).catch(ignore);
  const fileOf = (key: string) => join(folder, `${key}.png`);
  return {
    read: async (job) => {
      const key = keyOf(job);
      const entry = readIfThere(fileOf(key));
      if (entry === undefined || entry.length <= sealLength) return undefined;
      const png = entry.subarray(0, -sealLength);
      return sealOf(key, png, secret).equals(entry.subarray(-sealLength)) ? png : undefined;
    },
    write: async (job, png) => {
      const key = keyOf(job);
      // Under another name first, so that no other build reads half an image; and a link that has
      // the name of an entry is replaced, not followed.
      const draft = join(folder, `${randomUUID()}.draft`);
      try {
        await writeFile(draft, Buffer.concat([png, sealOf(key, png, secret)]), { flag: 'wx' });
        await rename(draft, fileOf(key));
      } catch {
        await rm(draft, { force: true }).catch(ignore);
      }
    },
  };
}

function readIfThere(file: string): Uint8Array | undefined {
  try {
    return readEntry(file);
  } catch {
    return ignore();
  }
}

/**
 * Not by promises: a course has thousands of small files, and each of the four steps would take several times as long
 * as the step itself.
 */
function readEntry(file: string): Uint8Array | undefined {
  const handle = openSync(file, plainFlags);
  try {
    const stats = fstatSync(handle);
    if (!stats.isFile() || stats.size > largest) return undefined;
    const bytes = Buffer.allocUnsafe(stats.size);
    let length = 0;
    for (let read = -1; read !== 0 && length < bytes.length; length += read) {
      read = readSync(handle, bytes, length, bytes.length - length, null);
    }
    return bytes.subarray(0, length);
  } finally {
    closeSync(handle);
  }
}

function keyOf(job: PngJob): string {
  return createHash('sha256')
    .update(
      `png ${encoderVersion} ${'svg' in job ? 'svg' : 'key'}\n${pngWidth(job)} ${job.scale ?? 1} ${job.colours ?? ''} ${job.level ?? ''}\n`,
    )
    .update('svg' in job ? job.svg : job.key)
    .digest('hex');
}

/** The cache is a convenience: what goes wrong with it only costs time. */
function ignore(): undefined {
  return undefined;
}
