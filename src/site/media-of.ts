import { findMediaFault } from '../media/index.ts';
import { type Course, documentsOf } from '../model/index.ts';
import { SiteError } from './site-error.ts';

/** The files of `media/` that chapters, pages and news show or hand out, and those of the course's own look. */
export function mediaOf(course: Course): ReadonlySet<string> {
  const { logo, card } = course.settings;
  const faces = course.theme?.look.faces ?? [];
  return new Set([
    ...[...documentsOf(course), ...course.news].flatMap(({ media }) => media),
    ...faces.flatMap(({ files }) => files.map(({ file }) => file)),
    ...Object.values(logo ?? {}),
    ...(card === undefined ? [] : [card]),
  ]);
}

/**
 * Looks at files of `media/` before they are published: a course may have been read without that, and
 * they may have changed since.
 * @throws SiteError for the first that is not to be published.
 */
export async function refuseUnfit(files: Iterable<string>, folder: string): Promise<void> {
  for (const file of files) {
    const fault = await findMediaFault(folder, file);
    if (fault) throw new SiteError(fault.message, fault.hint);
  }
}
