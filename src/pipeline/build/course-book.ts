import type { CheckedCourse } from '../../check/index.ts';
import type { Parts } from '../../render/index.ts';
import { cacheFolder } from '../cache-folder.ts';
import { courseDate } from './course-date.ts';

/** The e-book of a course in a folder; what makes it is loaded when it is asked for. */
export async function courseBook(
  checked: CheckedCourse,
  folder: string,
  {
    site,
    date,
    parts,
  }: {
    readonly site?: string | undefined;
    readonly date?: string | undefined;
    readonly parts?: Parts | undefined;
  },
): Promise<Uint8Array> {
  const { makeBook } = await import('../../publish/book/index.ts');
  const modified = courseDate(checked.course, date);
  return makeBook(checked, { folder, modified, site, parts, cacheDir: cacheFolder() });
}
