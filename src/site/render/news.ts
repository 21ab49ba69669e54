import type { Root } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { visit } from 'unist-util-visit';
import type { Chapter, News } from '../../model/types.ts';
import type { NewsEntry } from '../site-data.ts';
import { chapterTree } from './chapter.ts';
import type { RenderContext } from './context.ts';

/** The page of all news. */
export const newsPage = 'changes.html';

/** What the author tells of new editions, the latest first, as the page shows it. */
export function renderNews(context: Omit<RenderContext, 'chapter'>): NewsEntry[] {
  const { language } = context.course.settings;
  const day = new Intl.DateTimeFormat(language === 'en' ? 'en-GB' : language, {
    dateStyle: 'long',
    timeZone: 'UTC',
  });
  return context.course.news.map((news) => {
    const id = newsId(news);
    const { title, date } = news;
    const words = day.format(new Date(`${date}T00:00:00Z`));
    return { id, title, date, day: words, html: toHtml(newsTree(context, news, id)) };
  });
}

/** The id of news on its page. */
export function newsId({ name }: News): string {
  return name.replace(/\s+/g, '-');
}

/** The body of news as a tree; its headings stand below its title, its ids are its own in the page. */
export function newsTree(context: Omit<RenderContext, 'chapter'>, news: News, id: string): Root {
  // News is rendered as a chapter would be that stands outside the course: links lead to whole pages.
  const { title, file, body, media } = news;
  const chapter: Chapter = { id, index: -1, title, file, body, media, blocks: [] };
  const tree = chapterTree({ ...context, chapter });
  visit(tree, 'element', (node) => {
    const [, depth] = /^h([2-5])$/.exec(node.tagName) ?? [];
    if (depth !== undefined) node.tagName = `h${Number(depth) + 1}`;
    const { id: own, href } = node.properties;
    if (typeof own === 'string') node.properties.id = `${id}-${own}`;
    if (typeof href === 'string' && href.startsWith('#')) {
      node.properties.href = `#${id}-${href.slice(1)}`;
    }
  });
  return tree;
}
