import type { Root } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { visit } from 'unist-util-visit';
import { withoutControls } from '../../diagnostics/index.ts';
import type { Chapter, News } from '../../model/types.ts';
import { dayInWords } from '../../strings/date-language.ts';
import type { NewsEntry } from '../site-data.ts';
import { chapterTree } from './chapter.ts';
import type { RenderContext } from './context.ts';

/** The page of all news. */
export const newsPage = 'changes.html';

/** What the author tells of new editions, the latest first, as the page shows it. */
export function renderNews(context: Omit<RenderContext, 'chapter'>): NewsEntry[] {
  const { language } = context.course.settings;
  return context.course.news.map((news) => {
    const id = newsId(news);
    const { title, date } = news;
    const words = dayInWords(date, language);
    return { id, title, date, day: words, html: toHtml(newsTree(context, news, id)) };
  });
}

/** The id of news on its page. */
export function newsId({ name }: News): string {
  return withoutControls(name).replace(/\s+/g, '-');
}

/** News as a chapter that stands outside the course, so that links in it lead to whole pages. */
export function newsChapter(news: News): Chapter {
  const { title, file, body, media } = news;
  return {
    id: newsId(news),
    title,
    file,
    body,
    media,
    blocks: [],
    names: [],
    problems: [],
    spoken: { directives: {}, moves: {}, unsought: [] },
  };
}

/** The body of news as a tree; its headings stand below its title, its ids are its own in the page. */
export function newsTree(context: Omit<RenderContext, 'chapter'>, news: News, id: string): Root {
  const tree = chapterTree({ ...context, chapter: newsChapter(news) });
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
