import { createHash, randomUUID } from 'node:crypto';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { encoderVersion, isWholePng } from './encode-png.ts';
import { pngWidth } from './png.ts';
import type { PngJob } from './pngs.ts';

export interface PngCache {
  /** The finished image, or undefined if there is none or the file is damaged. */
  read(job: PngJob): Promise<Uint8Array | undefined>;
  /** Keeps an image. That it cannot be kept is no error: it is drawn again next time. */
  write(job: PngJob, png: Uint8Array): Promise<void>;
}

/** A folder of images named by the hash of what they show, made if it is missing. */
export async function pngCache(folder: string): Promise<PngCache> {
  await mkdir(folder, { recursive: true }).catch(ignore);
  const file = (job: PngJob) => join(folder, `${keyOf(job)}.png`);
  return {
    read: async (job) => {
      const bytes = await readFile(file(job)).catch(ignore);
      return bytes && isWholePng(bytes) ? bytes : undefined;
    },
    write: async (job, png) => {
      // Under another name first, so that no other build reads half an image.
      const draft = join(folder, `${randomUUID()}.draft`);
      try {
        await writeFile(draft, png);
        await rename(draft, file(job));
      } catch {
        await rm(draft, { force: true }).catch(ignore);
      }
    },
  };
}

function keyOf(job: PngJob): string {
  return createHash('sha256')
    .update(
      `png ${encoderVersion} ${'svg' in job ? 'svg' : 'key'}\n${pngWidth(job)} ${job.scale ?? 1} ${job.colours ?? ''}\n`,
    )
    .update('svg' in job ? job.svg : job.key)
    .digest('hex');
}

/** The cache is a convenience: what goes wrong with it only costs time. */
function ignore(): undefined {
  return undefined;
}
