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
  const { settings, news } = course;
  const { hostname } = new URL(site);
  const page = `${site}/${newsPage}`;
  const entries = renderNews(context).map(({ id, title, date }, index) => {
    const entry = news[index];
    const html = entry ? toHtml(newsTree(context, entry, page)) : '';
    const tag = [courseId(course), id].map(encodeURIComponent).join('/');
    return x('entry', [
      x('id', `tag:${hostname},${date}:${tag}`),
      x('title', title),
      x('updated', moment(date)),
      x('link', { rel: 'alternate', href: `${page}#${encodeURIComponent(id)}` }),
      x('content', { type: 'html' }, html),
    ]);
  });
  const feed = x('feed', { xmlns: 'http://www.w3.org/2005/Atom', 'xml:lang': settings.language }, [
    x('id', `${site}/`),
    x('title', strings.changes.feed(settings.title)),
    x('updated', moment(news[0]?.date ?? '1970-01-01')),
    x('link', { rel: 'self', href: `${site}/${feedPath}` }),
    x('link', { rel: 'alternate', href: page }),
    // A feed has an author (4.1.1); a course without one is its own.
    x('author', [x('name', settings.author ?? settings.title)]),
    ...(settings.licence === undefined ? [] : [x('rights', settings.licence)]),
    ...entries,
  ]);
  return { path: feedPath, content: writeXml(feed) };
}

/** A day as RFC 3339 has it: the author gives no time. */
function moment(date: string): string {
  return `${date}T00:00:00Z`;
}
