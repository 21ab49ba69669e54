import { toHtml } from 'hast-util-to-html';
import { type Chapter, type Course, documentsOf } from '../../../model/index.ts';
import { element, keyAt } from '../../../render/index.ts';
import type { EmbedChapter, PageData } from '../../site-data.ts';
import { boardElement, embedScript, frame, pageOf, picture } from './embed-elements.ts';
import type { Embed } from './embeds.ts';

/** Where the author finds what to copy. */
const listPath = 'boards/list.html';

/**
 * So many boards stand on a page, each with some 2.5 KB to copy; no label can name the folder of the pages
 * of a longer list.
 */
const mostOnPage = 100;

/** A page of the list of boards, or of its chapters where there are too many for one. */
export interface BoardList {
  readonly path: string;
  readonly data: (embeds: readonly Embed[]) => Omit<PageData['boards'], 'chapters'>;
}

/**
 * What the author copies, on one page, or on several with whole chapters.
 * @param boards how many each chapter has (`boardsByChapter`).
 */
export function boardLists(
  course: Course,
  site: string | undefined,
  boards: Readonly<Record<string, number>>,
): BoardList[] {
  const counts = new Map(Object.entries(boards));
  const groups = inGroups(course, counts);
  const listOf = (path: string, chapters: readonly Chapter[]): BoardList => ({
    path,
    data: (embeds) => ({
      path,
      embeds: makeSnippets(chapters, embeds, site),
      embedScript: scriptSnippet(site),
      parts: [],
    }),
  });
  const [first = [], ...others] = groups;
  if (counts.size === 0) return [];
  if (others.length === 0) return [listOf(listPath, first)];
  const parts = groups.flatMap((chapters, index) =>
    chapters.map((chapter) => ({
      href: `lists/${index + 1}.html#${encodeURIComponent(chapter.id)}`,
      title: chapter.title,
      count: counts.get(chapter.file) ?? 0,
    })),
  );
  const index = { path: listPath, embeds: [], embedScript: scriptSnippet(site), parts };
  return [
    { path: listPath, data: () => index },
    ...groups.map((chapters, index) => listOf(`boards/lists/${index + 1}.html`, chapters)),
  ];
}

/** How many named positions stand in each chapter that has any, by its file. */
export function boardsByChapter(course: Course): Readonly<Record<string, number>> {
  const counts = new Map<string, number>();
  for (const { ref } of Object.values(course.labels)) {
    if (keyAt(course, ref) === undefined) continue;
    counts.set(ref.chapter, (counts.get(ref.chapter) ?? 0) + 1);
  }
  return Object.fromEntries(counts);
}

function inGroups(course: Course, counts: ReadonlyMap<string, number>): Chapter[][] {
  const groups: Chapter[][] = [];
  let room = 0;
  for (const chapter of documentsOf(course)) {
    const count = counts.get(chapter.file) ?? 0;
    if (count === 0) continue;
    const last = groups.at(-1);
    if (last === undefined || count > room) {
      groups.push([chapter]);
      room = mostOnPage - count;
    } else {
      last.push(chapter);
      room -= count;
    }
  }
  return groups;
}

/** Chapter by chapter. Without an address of the site it stays to be put in. */
function makeSnippets(
  chapters: readonly Chapter[],
  embeds: readonly Embed[],
  site: string | undefined,
): EmbedChapter[] {
  const root = `${site ?? 'ADDRESS'}/`;
  const files = new Set(chapters.map(({ file }) => file));
  const shown = embeds.filter(({ chapter }) => files.has(chapter));
  return chapters.map(({ id, file, title }): EmbedChapter => {
    const entries = shown
      .filter(({ chapter }) => chapter === file)
      .map((embed) => ({
        label: embed.label,
        words: embed.words,
        href: embed.href,
        page: pageOf(embed),
        frame: toHtml(frame(embed, root)),
        element: toHtml(boardElement(embed, root, [picture(embed, root)])),
        picture: toHtml(picture(embed, root)),
      }));
    return { id, title, entries };
  });
}

/** The line that loads the script, for a page that shows boards without frames. */
function scriptSnippet(site: string | undefined): string {
  return toHtml(element('script', { src: `${site ?? 'ADDRESS'}/${embedScript}`, defer: true }, []));
}
