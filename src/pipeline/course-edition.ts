import { createHash } from 'node:crypto';
import { type CourseFiles, documentsOf } from '../read/index.ts';
import { type CurrentCourse, hashOfFile } from '../workspace/index.ts';

/**
 * A hash of all that a course is published from: equal editions have equal models. Engine results are not in it, since
 * they are published nowhere.
 * @param siblings where its links into other courses lead.
 */
export function courseEdition(files: CourseFiles, siblings: CurrentCourse['siblings'] = {}) {
  const { settings, theme, games, news = [], media, unfit, pictures, translation } = files;
  const hash = createHash('sha256');
  for (const file of [
    ...(settings ? [settings] : []),
    ...(theme ? [theme] : []),
    ...documentsOf(files),
    ...games,
    ...news,
  ]) {
    hash.update(JSON.stringify([file.path, hashOfFile(file)]));
  }
  hash.update(JSON.stringify([media, [...(unfit?.keys() ?? [])], [...(pictures ?? [])], siblings]));
  if (translation) hash.update(JSON.stringify(translation));
  return hash.digest('hex');
}
