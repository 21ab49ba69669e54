import type { PngJob } from './png.ts';
import { makePngs } from './pngs.ts';

/** One image as a PNG, out of the cache folder where that has it. @throws as `makePngs`. */
export async function makeOnePng(job: PngJob, cache: string | undefined): Promise<Uint8Array> {
  const made: Uint8Array[] = [];
  await makePngs([job], (_, png) => void made.push(png), { cache });
  const [png] = made;
  if (png === undefined) throw new Error('an image was neither drawn nor kept');
  return png;
}
