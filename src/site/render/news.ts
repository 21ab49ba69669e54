import type { Element, Root } from 'hast';
import { joinSentences } from '../../contract/index.ts';
import type { BoardPicture } from '../../draw/index.ts';
import type { News } from '../../model/index.ts';
import {
  addressInSite,
  chapterDocument,
  element,
  elementsIn,
  newsChapter,
  newsId,
  newsPicture,
  pageMedium,
  resolve,
  type Target,
  writeHtml,
} from '../../render/index.ts';
import { dayInWords } from '../../strings/index.ts';
import type { NewsEntry } from '../site-data.ts';
import type { SiteContext } from './site-context.ts';

/** Width and height of a board in news that is read elsewhere, in pixels. */
export const newsPictureSize = 400;

/** The news for its page, latest first. */
export function renderNews(context: SiteContext): NewsEntry[] {
  const { language } = context.course.settings;
  return context.course.news.map((news) => {
    const id = newsId(news);
    const { title, date } = news;
    const words = dayInWords(date, language);
    return {
      id,
      title,
      date,
      day: words,
      html: writeHtml(newsTree(context, news).children),
    };
  });
}

/**
 * The body of news as a tree; its headings stand below its title, its ids are its own in the page. Links lead
 * from `base`, the address of the page, or from the page itself. With `base` boards are pictures: it is read elsewhere.
 */
export function newsTree(context: SiteContext, news: News, base?: string): Root {
  const { addresses, strings } = context;
  const own = newsId(news);
  const chapter = newsChapter(news, context.course);
  const addressOf = (target: Target): string => {
    const there = isWithin(target, chapter.file)
      ? `#${encodeURIComponent(`${own}-${target.id ?? ''}`)}`
      : addressInSite(target, addresses);
    return base === undefined ? there : new URL(there, base).href;
  };
  const document = chapterDocument({ ...context, chapter });
  dropPictureLinks(document);
  let boards = 0;
  const picture = ({ desc, title }: BoardPicture): Element => {
    boards += 1;
    const alt = joinSentences(title, desc);
    const src = newsPicture(news, boards);
    return element('img', { src, alt, width: newsPictureSize, height: newsPictureSize }, []);
  };
  const medium = {
    ...pageMedium(addresses),
    addressOf,
    ...(base !== undefined && { board: picture }),
  };
  const tree = resolve(document, medium, strings);
  for (const node of elementsIn(tree)) {
    const [, depth] = /^h([2-5])$/.exec(node.tagName) ?? [];
    if (depth !== undefined) node.tagName = `h${Number(depth) + 1}`;
    const { id, src } = node.properties;
    if (typeof id === 'string') node.properties.id = `${own}-${id}`;
    // Of notes, and of an author's HTML.
    for (const name of ['ariaDescribedBy', 'ariaLabelledBy'] as const) {
      const ids = node.properties[name];
      if (Array.isArray(ids)) node.properties[name] = ids.map((each) => `${own}-${each}`);
    }
    if (typeof src === 'string' && base !== undefined)
      node.properties.src = new URL(src, base).href;
  }
  return tree;
}

/** The files of a diagram in single and double size are offered in chapters only. */
function dropPictureLinks(document: Root): void {
  for (const node of elementsIn(document)) {
    node.children = node.children.filter(
      (child) => child.type !== 'element' || child.data?.role !== 'pictures',
    );
  }
}

function isWithin(
  target: Target,
  file: string,
): target is Extract<Target, { to: 'chapter' | 'note' }> {
  return target.to === 'note' || (target.to === 'chapter' && target.chapter === file);
}
