import { stat } from 'node:fs/promises';
import path from 'node:path';
import type { Course } from '../model/index.ts';
import { toldDate } from './told-date.ts';

/**
 * When a course was last changed: the date of its newest file, so that the same files give the same
 * book; unless a date is told, since a copy of a repository has the date of the copy.
 */
export async function courseDate(folder: string, course: Course): Promise<Date> {
  const told = toldDate();
  if (told !== undefined) return told;
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
