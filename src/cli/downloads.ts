import type { CheckedCourse } from '../check/index.ts';
import { courseId } from '../model/index.ts';
import type { SiteDownload } from '../site/index.ts';
import { courseBook } from './course-book.ts';

/** What a site offers to take along: the course as an e-book, and its moves. */
export function courseDownloads(
  checked: CheckedCourse,
  folder: string,
  site: string | undefined,
): SiteDownload[] {
  const name = courseId(checked.course);
  return [
    {
      kind: 'book',
      path: `files/${name}.epub`,
      make: () => courseBook(checked, folder, { site }),
    },
    {
      kind: 'moves',
      path: `files/${name}.pgn`,
      async make() {
        const { makePgn } = await import('../publish/pgn/index.ts');
        return Buffer.from(makePgn(checked, { site }));
      },
    },
  ];
}
