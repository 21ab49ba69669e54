import { isShelf } from '../../read/index.ts';
import { codeOf, compareCourse } from './compare-course.ts';
import type { CompareOptions } from './compare-formats.ts';

/**
 * `linewright compare`: where games of a PGN file, or of the standard input (`-`), leave the course, and how
 * often. Unreadable games are listed and not counted.
 */
export async function compare(
  file: string,
  folder: string,
  options: CompareOptions,
): Promise<number> {
  if (await isShelf(folder)) {
    const { compareOnShelf } = await import('../shelf/compare-on-shelf.ts');
    return compareOnShelf(file, folder, options);
  }
  return codeOf[await compareCourse(file, folder, options)];
}
