import { toHtml } from 'hast-util-to-html';
import { x } from 'xastscript';
import { courseId } from '../../model/index.ts';
import { newsPage, writeXml } from '../../render/index.ts';
import type { SiteFile } from '../site-data.ts';
import { newsTree, renderNews } from './news.ts';
import type { SiteContext } from './site-context.ts';

/** Where the feed stands in the site. */
export const feedPath = 'feed.xml';

/**
 * The news as an Atom feed (RFC 4287). Its dates are the author's and its ids are `tag:` URIs
 * (RFC 4151) of the course's own name, so that building again changes nothing.
 * @param site address of the site, without a final `/`; a feed needs one.
 */
export function makeFeed(context: SiteContext, site: string): SiteFile {
  const { course, strings } = context;
  const { settings } = course;
  return writeFeed({
    site,
    language: settings.language,
    title: strings.changes.feed(settings.title),
    page: `${site}/${newsPage}`,
    // A feed has an author (4.1.1); a course without one is its own.
    author: settings.author ?? settings.title,
    rights: settings.licence,
    entries: feedEntries(context, site),
  });
}

/** A feed; `entries` the latest first. */
export interface Feed {
  /** Address of the site, without a final `/`. */
  readonly site: string;
  readonly language: string;
  readonly title: string;
  /** Address of the page that shows the same. */
  readonly page: string;
  readonly author: string;
  readonly rights?: string | undefined;
  readonly entries: readonly FeedEntry[];
}

export interface FeedEntry {
  readonly id: string;
  readonly title: string;
  /** `2026-11-25` */
  readonly date: string;
  readonly href: string;
  readonly html: string;
  /** Where it was published first, in a feed that joins several (4.2.11), and in which language. */
  readonly source?:
    | {
        readonly id: string;
        readonly title: string;
        readonly author: string;
        readonly language: string;
        readonly rights?: string | undefined;
      }
    | undefined;
}

/** The news of a course, as its feed and that of its shelf have them. */
export function feedEntries(context: SiteContext, site: string): FeedEntry[] {
  const { course } = context;
  const { hostname } = new URL(site);
  const page = `${site}/${newsPage}`;
  return renderNews(context).map(({ id, title, date }, index) => {
    const entry = course.news[index];
    const tag = [courseId(course), id].map(encodeURIComponent).join('/');
    return {
      id: `tag:${hostname},${date}:${tag}`,
      title,
      date,
      href: `${page}#${encodeURIComponent(id)}`,
      html: entry ? toHtml(newsTree(context, entry, page)) : '',
    };
  });
}

export function writeFeed({
  site,
  language,
  title,
  page,
  author,
  rights,
  entries,
}: Feed): SiteFile {
  const feed = x('feed', { xmlns: 'http://www.w3.org/2005/Atom', 'xml:lang': language }, [
    x('id', `${site}/`),
    x('title', title),
    x('updated', moment(entries[0]?.date ?? '1970-01-01')),
    x('link', { rel: 'self', href: `${site}/${feedPath}` }),
    x('link', { rel: 'alternate', href: page }),
    x('author', [x('name', author)]),
    ...(rights === undefined ? [] : [x('rights', rights)]),
    ...entries.map(writeEntry),
  ]);
  return { path: feedPath, content: writeXml(feed) };
}

function writeEntry({ id, title, date, href, html, source }: FeedEntry) {
  return x('entry', source === undefined ? {} : { 'xml:lang': source.language }, [
    x('id', id),
    x('title', title),
    x('updated', moment(date)),
    x('link', { rel: 'alternate', href }),
    ...(source === undefined
      ? []
      : [
          x('author', [x('name', source.author)]),
          x('source', [
            x('id', source.id),
            x('title', source.title),
            ...(source.rights === undefined ? [] : [x('rights', source.rights)]),
          ]),
        ]),
    x('content', { type: 'html' }, html),
  ]);
}

/** A day as RFC 3339 has it: the author gives no time. */
function moment(date: string): string {
  return `${date}T00:00:00Z`;
}
