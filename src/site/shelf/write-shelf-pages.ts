import { join } from 'node:path';
import { initialPosition } from '../../chess/index.ts';
import { type BuiltCourse, practicePage, type Shelf } from '../../contract/index.ts';
import { cardJob, makePngs, type PngJob } from '../../draw/index.ts';
import { listFiles } from '../../output/index.ts';
import { cardPath } from '../../render/index.ts';
import { copyAssets, readAssets } from '../build/assets.ts';
import { renderPage } from '../build/render-page.ts';
import { type SiteWriter, siteWriter } from '../build/site-writer.ts';
import { workerFile, writeWorker } from '../offline/write-worker.ts';
import type { PageLocals } from '../site-data.ts';
import { iconJobs } from '../web-app/icons.ts';
import { clothSheet } from './cloth-sheet.ts';
import { booksOf, latestNews, tableOf } from './shelf-books.ts';
import { shelfFiles } from './shelf-files.ts';
import { isPractised, shelfFrame } from './shelf-frame.ts';

export interface ShelfPagesOptions {
  /** Folder of finished images, kept between builds. */
  readonly cacheDir?: string | undefined;
}

/**
 * Writes what stands at the root of a shelf beside its courses: the first page, the pages that act over all courses,
 * and the files that go with them.
 * @param built in the order of the shelf; each course stands in its folder of `out` already.
 * @param out the root of the shelf.
 * @returns what it has written, relative to `out`, with `/`.
 */
export async function writeShelfPages(
  built: readonly BuiltCourse[],
  shelf: Shelf,
  out: string,
  options: ShelfPagesOptions = {},
): Promise<string[]> {
  const assets = await readAssets();
  const frame = shelfFrame(shelf, built, assets);
  const writer = siteWriter(out);
  const books = booksOf(built);
  const cloths = clothSheet(built);
  const forScripts = { books, table: tableOf(built) };
  const files = [...shelfFiles(shelf, built, frame), ...(cloths ? [cloths] : [])];
  for (const { path, content } of files) await writer.write(path, content);

  const pages: { path: string; locals: PageLocals }[] = [
    {
      path: 'index.html',
      locals: {
        page: 'shelf',
        frame,
        data: {
          books,
          news: latestNews(built, shelf.language),
          sheets: cloths ? [cloths.path] : [],
        },
      },
    },
    ...(isPractised(built)
      ? [
          {
            path: practicePage,
            locals: { page: 'shelf-practice', frame, data: forScripts },
          } as const,
        ]
      : []),
    { path: 'compare.html', locals: { page: 'shelf-compare', frame, data: forScripts } },
    { path: 'search.html', locals: { page: 'shelf-search', frame, data: forScripts } },
    { path: '404.html', locals: { page: 'missing', frame, data: { chapters: [] } } },
  ];
  for (const { path, locals } of pages) await writer.write(path, await renderPage(locals));
  await writePictures(shelf, writer, options);
  await writer.finish();
  await copyAssets(out, assets);
  const ofPackage = (await listFiles(join(out, 'assets'))).map((file) => `assets/${file}`);
  const own = [...writer.files.keys(), ...ofPackage].sort();
  if (!frame.offline) return own;
  // Last, since it lists all that was written. What a course has, its own worker keeps.
  await writeWorker(out, own, writer.files);
  return [...own, workerFile].sort();
}

/** The icons, and the card that other sites show beside a link to the shelf. */
async function writePictures(
  { title, author, language }: Shelf,
  writer: SiteWriter,
  { cacheDir }: ShelfPagesOptions,
): Promise<void> {
  const card = {
    ...{ course: title, author, language },
    placement: initialPosition.fen,
    view: 'white',
  } as const;
  const jobs: { path: string; job: PngJob }[] = [
    ...iconJobs('white'),
    { path: decodeURIComponent(cardPath()), job: cardJob(card) },
  ];
  await makePngs(
    jobs.map(({ job }) => job),
    async (index, png) => {
      const path = jobs[index]?.path;
      if (path !== undefined) await writer.write(path, png);
    },
    { cache: cacheDir },
  );
}
