import { toXml } from 'xast-util-to-xml';
import { x } from 'xastscript';
import type { SiteFile, SiteLanguage } from './site-data.ts';

/** No page to arrive at, all chapters once more, and boards that only other sites show. */
const unlisted = /^(404\.html|print\.html|boards\/.*)$/;
/** The most addresses that one sitemap may have (sitemaps.org, from memory). */
const most = 50_000;

/**
 * Where a crawler finds all pages (sitemaps.org protocol 0.9), and, for a site at the root of its
 * host, the file that leads there: robots.txt is read nowhere else.
 * @param site address of the site without a final `/`.
 * @param files of the site, relative to it; the pages are picked from them.
 * @param languages that it is in: then each address names the same page in the others.
 */
export function sitemapFiles(
  site: string,
  files: readonly string[],
  languages: readonly SiteLanguage[] = [],
): SiteFile[] {
  const places = files.map((file) => pageOfFile(file, languages));
  const isTranslated = ({ page, language }: PageOfLanguage) =>
    !(language?.lacks.includes(page) ?? false);
  const pages = places.filter(
    (place) => place.page.endsWith('.html') && !unlisted.test(place.page) && isTranslated(place),
  );
  const all = new Set(pages.map(({ file }) => file));
  const address = (file: string) => {
    const path = file
      .replace(/(^|\/)index\.html$/, '$1')
      .split('/')
      .map(encodeURIComponent);
    return new URL(path.join('/'), `${site}/`).href;
  };
  const urls = pages.slice(0, most).map(({ file, page }) => {
    const others = languages.filter(({ folder }) => all.has(folder + page));
    const links = others.length < 2 ? [] : others;
    return x('url', [
      x('loc', address(file)),
      ...links.map(({ tag, folder }) =>
        x('xhtml:link', { rel: 'alternate', hreflang: tag, href: address(folder + page) }),
      ),
    ]);
  });
  const tree = x(null, [
    { type: 'instruction', name: 'xml', value: 'version="1.0" encoding="UTF-8"' },
    x(
      'urlset',
      {
        xmlns: 'http://www.sitemaps.org/schemas/sitemap/0.9',
        ...(languages.length > 0 && { 'xmlns:xhtml': 'http://www.w3.org/1999/xhtml' }),
      },
      urls,
    ),
  ]);
  const sitemap = { path: 'sitemap.xml', content: `${toXml(tree)}\n` };
  if (new URL(site).pathname !== '/') return [sitemap];
  const robots = `User-agent: *\nAllow: /\nSitemap: ${site}/sitemap.xml\n`;
  return [sitemap, { path: 'robots.txt', content: robots }];
}

interface PageOfLanguage {
  readonly file: string;
  /** Within the site of its language. */
  readonly page: string;
  readonly language: SiteLanguage | undefined;
}

function pageOfFile(file: string, languages: readonly SiteLanguage[]): PageOfLanguage {
  const language = languages.find(({ folder }) => folder !== '' && file.startsWith(folder));
  return { file, page: language ? file.slice(language.folder.length) : file, language };
}
