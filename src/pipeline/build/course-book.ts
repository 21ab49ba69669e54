import type { CheckedCourse } from '../../check/index.ts';
import type { BookOptions } from '../../publish/book/index.ts';
import { cacheFolder } from '../cache-folder.ts';
import { courseDate } from './course-date.ts';

/** The e-book of a course in a folder; its code is loaded at need. */
export async function courseBook(
  checked: CheckedCourse,
  folder: string,
  {
    site,
    date,
    ...kept
  }: Pick<BookOptions, 'site' | 'parts' | 'packed' | 'recall'> & {
    readonly date?: string | undefined;
  },
): Promise<Uint8Array> {
  const { makeBook } = await import('../../publish/book/index.ts');
  const modified = courseDate(checked.course, date);
  return makeBook(checked, { folder, modified, site, ...kept, cacheDir: cacheFolder() });
}
