import { withoutControls } from '../diagnostics/index.ts';
import { type Chapter, type Course, type DiagramBlock, type News, nodeAt } from '../model/index.ts';

/** The page of all news. */
export const newsPage = 'changes.html';

/** The id of news on its page. */
export function newsId({ name }: News): string {
  return withoutControls(name).replace(/\s+/g, '-');
}

/**
 * The file of a picture of news in the site.
 * @param number from 1, of those that show a position.
 */
export function newsPicture(news: News, number: number): string {
  return `images/news/${encodeURIComponent(newsId(news))}-${number}.png`;
}

/** News as a chapter outside the course, so that its links lead to whole pages. */
export function newsChapter(news: News, course: Course): Chapter {
  const { title, file, body, media } = news;
  return {
    id: newsId(news),
    title,
    file,
    frontTexts: [],
    body,
    media,
    blocks: newsBoards(news, course),
    names: [],
    problems: [],
    spoken: { directives: {}, moves: {}, unsought: [] },
  };
}

/** The boards of news. Named positions are those that the course has now. */
export function newsBoards({ blocks }: News, course: Course): DiagramBlock[] {
  return blocks.map((block): DiagramBlock => {
    const name = block.at?.name;
    const label =
      name !== undefined && Object.hasOwn(course.labels, name) ? course.labels[name] : undefined;
    const node = label && nodeAt(course, label.ref);
    if (!node?.position) return block;
    const { position, move } = node;
    return { ...block, position, ...(move && { lastMove: { from: move.from, to: move.to } }) };
  });
}
