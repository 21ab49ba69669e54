import type { BuiltCourse, Shelf } from '../../contract/index.ts';
import { drawIcon } from '../../draw/icon.ts';
import { stringsFor } from '../../strings/index.ts';
import { readerWordsScript } from '../render/data-scripts.ts';
import { writeFeed } from '../render/feed.ts';
import type { SiteFile, SiteFrame } from '../site-data.ts';
import { manifestOf } from '../web-app/app-manifest.ts';
import { iconPath } from '../web-app/icons.ts';
import { folderOf } from './shelf-books.ts';
import { shelfSitemap } from './shelf-sitemap.ts';

/** The files beside the pages of a shelf. */
export function shelfFiles(
  shelf: Shelf,
  built: readonly BuiltCourse[],
  frame: SiteFrame,
): SiteFile[] {
  const { site } = frame;
  return [
    readerWordsScript(stringsFor(shelf.language)),
    manifestOf(shelf),
    { path: iconPath('icon.svg'), content: drawIcon('white', false) },
    ...(site === undefined ? [] : shelfSitemap(site, built, frame.pages)),
    ...(site === undefined || frame.feed === undefined ? [] : [shelfFeed(shelf, built, site)]),
  ];
}

/** The news of all courses as one feed, the latest first. */
function shelfFeed(shelf: Shelf, built: readonly BuiltCourse[], site: string): SiteFile {
  const strings = stringsFor(shelf.language);
  const entries = built.flatMap((course) => {
    const address = `${site}/${folderOf(course)}`;
    const source = {
      id: address,
      title: course.title,
      author: course.author ?? course.title,
      language: course.language,
    };
    return course.news.flatMap(({ id, title, date, href, html = '' }) =>
      id === undefined ? [] : [{ id, title, date, href: address + href, html, source }],
    );
  });
  return writeFeed({
    site,
    language: shelf.language,
    title: strings.shelf.feed(shelf.title),
    page: `${site}/#news`,
    author: shelf.author ?? shelf.title,
    rights: shelf.licence,
    entries: entries.sort((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0)),
  });
}
