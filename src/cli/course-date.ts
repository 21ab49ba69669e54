import { stat } from 'node:fs/promises';
import path from 'node:path';
import type { Course } from '../model/index.ts';

/**
 * When a course was last changed: the date of its newest file, so that the same files give the same
 * book. SOURCE_DATE_EPOCH, seconds since 1970, says otherwise (reproducible-builds.org), since a
 * copy of a repository has the date of the copy.
 */
export async function courseDate(folder: string, course: Course): Promise<Date> {
  const told = process.env.SOURCE_DATE_EPOCH;
  if (told !== undefined && /^\d{1,11}$/.test(told)) return new Date(Number(told) * 1000);
  const files = course.chapters.flatMap(({ file, media, blocks }) => [
    file,
    ...media,
    ...blocks.flatMap((block) => (block.kind === 'game' ? [block.file] : [])),
  ]);
  const dates = await Promise.all(
    [...new Set(['course.yaml', ...files])].map(async (file) => {
      const { mtimeMs } = await stat(path.join(folder, file));
      return mtimeMs;
    }),
  );
  return new Date(Math.max(...dates));
}
