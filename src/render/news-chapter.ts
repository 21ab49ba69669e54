import { withoutControls } from '../diagnostics/index.ts';
import type { Chapter, News } from '../model/index.ts';

/** The page of all news. */
export const newsPage = 'changes.html';

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
