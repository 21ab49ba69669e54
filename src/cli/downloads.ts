import { createHash } from 'node:crypto';
import type { CheckedCourse } from '../check/index.ts';
import { readPlainFile } from '../files/index.ts';
import { courseId } from '../model/index.ts';
import type { Parts } from '../render/index.ts';
import type { Keep, SiteDownload } from '../site/index.ts';
import { courseBook } from './course-book.ts';
import { courseDate } from './course-date.ts';

/** What a site offers to take along: the course as an e-book, and its moves, also those of each chapter. */
export function courseDownloads(
  checked: CheckedCourse,
  folder: string,
  {
    site,
    keep,
    parts,
  }: {
    readonly site?: string | undefined;
    readonly keep: Keep;
    readonly parts?: Parts | undefined;
  },
): SiteDownload[] {
  const name = courseId(checked.course);
  const place = site ?? '';
  return [
    {
      kind: 'book',
      path: `files/${name}.epub`,
      async make() {
        const date = courseDate(checked.course)?.toISOString() ?? '';
        const pictures = await mediaHash(checked, folder);
        return keep('book', [place, date, pictures], () =>
          courseBook(checked, folder, { site, parts }),
        );
      },
    },
    {
      kind: 'moves',
      path: `files/${name}.pgn`,
      async make() {
        const { makePgn } = await import('../publish/pgn/index.ts');
        return Buffer.from(makePgn(checked, { site, parts }));
      },
    },
    ...checked.course.chapters.map(
      ({ id }): SiteDownload => ({
        kind: 'moves',
        chapter: id,
        path: `files/chapters/${id}.pgn`,
        async make() {
          const { makePgn } = await import('../publish/pgn/index.ts');
          return Buffer.from(makePgn(checked, { chapter: id, site, parts }));
        },
      }),
    ),
  ];
}

/** In bytes: a book can have no larger picture. */
const largest = 50_000_000;

/** A hash of the pictures that a book shows; what cannot be read is told by whoever makes it. */
async function mediaHash({ course }: CheckedCourse, folder: string): Promise<string> {
  const hash = createHash('sha256');
  for (const file of new Set(course.chapters.flatMap(({ media }) => media))) {
    const read = await readPlainFile(folder, file, largest).catch(() => undefined);
    hash.update(JSON.stringify([file, read?.size])).update(read?.bytes ?? '');
  }
  return hash.digest('hex');
}
