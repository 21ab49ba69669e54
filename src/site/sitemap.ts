import { toXml } from 'xast-util-to-xml';
import { x } from 'xastscript';
import type { SiteFile } from './site-data.ts';

/** No page to arrive at, all chapters once more, and boards that only other sites show. */
const unlisted = /^(404\.html|print\.html|boards\/.*)$/;
/** The most addresses that one sitemap may have (sitemaps.org, from memory). */
const most = 50_000;

/**
 * Where a crawler finds all pages (sitemaps.org protocol 0.9), and, for a site at the root of its
 * host, the file that leads there: robots.txt is read nowhere else.
 * @param site address of the site without a final `/`.
 * @param files of the site, relative to it; the pages are picked from them.
 */
export function sitemapFiles(site: string, files: readonly string[]): SiteFile[] {
  const pages = files.filter((file) => file.endsWith('.html') && !unlisted.test(file));
  const urls = pages.slice(0, most).map((file) => {
    const path = file === 'index.html' ? '' : file.split('/').map(encodeURIComponent).join('/');
    return x('url', [x('loc', new URL(path, `${site}/`).href)]);
  });
  const tree = x(null, [
    { type: 'instruction', name: 'xml', value: 'version="1.0" encoding="UTF-8"' },
    x('urlset', { xmlns: 'http://www.sitemaps.org/schemas/sitemap/0.9' }, urls),
  ]);
  const sitemap = { path: 'sitemap.xml', content: `${toXml(tree)}\n` };
  if (new URL(site).pathname !== '/') return [sitemap];
  const robots = `User-agent: *\nAllow: /\nSitemap: ${site}/sitemap.xml\n`;
  return [sitemap, { path: 'robots.txt', content: robots }];
}
