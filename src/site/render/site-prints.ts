import type { Chapter } from '../../model/index.ts';
import { type PartMaker, printPart } from '../../render/index.ts';
import type { SiteFrame, SitePlace } from '../site-data.ts';
import { pagePart } from './chapter-page.ts';
import type { SiteMemory } from './rendered-site.ts';

/** Prints of all that the pages and files of a site are made of. */
export interface SitePrints {
  /** Of what shows the course without its chapters' words. */
  readonly whole: () => string;
  /** Of what also shows a part of each chapter and of the author's pages. */
  readonly withAll: (maker: PartMaker<unknown>, pages?: readonly Chapter[]) => () => string;
  /** Of a chapter's page. @param around plain data that the page shows beside the chapter. */
  readonly ofChapter: (chapter: Chapter, around: unknown) => () => string;
  /** Of a chapter's text as its page has it. */
  readonly ofText: (chapter: Chapter) => () => string;
}

/** @returns nothing without a memory. */
export function sitePrints({
  memory,
  frame,
  place,
  chapters,
}: {
  readonly memory: SiteMemory | undefined;
  readonly frame: SiteFrame;
  readonly place: SitePlace;
  readonly chapters: readonly Chapter[];
}): SitePrints | undefined {
  if (memory === undefined) return undefined;
  const framed = printPart(JSON.stringify(frame));
  const whole = printPart(JSON.stringify([memory.face, framed, place]));
  return {
    whole: () => whole,
    withAll:
      (maker, pages = []) =>
      () => {
        const prints = [...chapters, ...pages].map((chapter) => memory.print(maker, chapter));
        return printPart([whole, ...prints].join());
      },
    ofChapter: (chapter, around) => () =>
      printPart(JSON.stringify([framed, around, memory.print(pagePart, chapter)])),
    ofText: (chapter) => () =>
      printPart(
        JSON.stringify([chapter.title, chapter.summary ?? '', memory.print(pagePart, chapter)]),
      ),
  };
}
