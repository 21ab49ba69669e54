import { createHash } from 'node:crypto';
import type { CourseFiles } from '../read/index.ts';

/** A hash of all that a course is read from: two of the same edition have the same model. */
export function courseEdition({ settings, chapters, games, news = [], media, unfit }: CourseFiles) {
  const hash = createHash('sha256');
  for (const { path, text } of [...(settings ? [settings] : []), ...chapters, ...games, ...news]) {
    hash.update(JSON.stringify([path, text.length])).update(text);
  }
  hash.update(JSON.stringify([media, [...(unfit?.keys() ?? [])]]));
  return hash.digest('hex');
}
