import type { Chapter } from '../../model/index.ts';
import { cardPath, type Parts } from '../../render/index.ts';
import type { ChapterHead, ChapterPage } from '../site-data.ts';
import { pagePart } from './chapter-page.ts';
import { page } from './rendered-site.ts';
import type { SitePrints } from './site-prints.ts';

/** The pages of the chapters, each with what indexes of words need to know of it. */
export function pagesOfChapters(
  chapters: readonly Chapter[],
  {
    heads,
    parts,
    prints,
    movesOf,
  }: {
    readonly heads: readonly ChapterHead[];
    readonly parts: Parts;
    readonly prints: SitePrints | undefined;
    readonly movesOf: (id: string) => string | undefined;
  },
) {
  return chapters.map((chapter, index) => {
    const head = heads[index] ?? headOf(chapter, index + 1);
    const around = {
      moves: movesOf(chapter.id),
      previous: heads[index - 1],
      next: heads[index + 1],
    };
    const shown = (): ChapterPage => ({ ...head, ...parts.of(pagePart, chapter) });
    const sitePage = page(
      'chapter',
      `${chapter.id}.html`,
      () => ({ chapter: shown(), ...around }),
      prints?.ofChapter(chapter, [head, around]),
    );
    return { id: chapter.id, page: shown, print: prints?.ofText(chapter), sitePage };
  });
}

export function headOf(chapter: Chapter, number: number): ChapterHead {
  const { id, title, summary, draft, language } = chapter;
  return {
    id,
    number,
    title,
    ...(summary !== undefined && { summary }),
    ...(draft && { draft }),
    ...(language !== undefined && { language }),
    card: cardPath(chapter),
  };
}
