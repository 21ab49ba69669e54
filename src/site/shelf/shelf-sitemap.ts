import { x } from 'xastscript';
import type { BuiltCourse } from '../../contract/index.ts';
import { writeXml } from '../../render/index.ts';
import type { CoursePage, SiteFile } from '../site-data.ts';
import { sitemapFiles } from '../sitemap.ts';
import { folderOf } from './shelf-books.ts';

/** The sitemap of the shelf's own pages: the one that is asked for leads to it and to those of the courses. */
const ownPages = 'pages.xml';

/**
 * Where a crawler finds all pages of a shelf (sitemaps.org protocol 0.9, "Using Sitemap index files"): each course has
 * a sitemap of its own, since it is built as it would be alone.
 * @param site address of the shelf without a final `/`.
 */
export function shelfSitemap(
  site: string,
  built: readonly BuiltCourse[],
  pages: readonly CoursePage[],
): SiteFile[] {
  const files = ['index.html', ...pages.map(({ file }) => file)];
  const [own, ...others] = sitemapFiles(site, files);
  const sitemaps = [ownPages, ...built.map((course) => `${folderOf(course)}sitemap.xml`)];
  const index = x(
    'sitemapindex',
    { xmlns: 'http://www.sitemaps.org/schemas/sitemap/0.9' },
    sitemaps.map((path) => x('sitemap', [x('loc', `${site}/${path}`)])),
  );
  return [
    { path: 'sitemap.xml', content: writeXml(index) },
    ...(own === undefined ? [] : [{ ...own, path: ownPages }]),
    ...others,
  ];
}
