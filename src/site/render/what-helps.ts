import type { Strings } from '../../strings/index.ts';
import type { ChapterHead, PageData, SitePlace } from '../site-data.ts';
import { signsLegend } from './signs/signs-legend.ts';

/** What the page of signs has beside the words of the catalogue. */
export function whatHelps(
  strings: Strings,
  heads: readonly ChapterHead[],
  { whole, of }: ReturnType<typeof downloadsIn>,
): Omit<PageData['signs'], 'chapters'> {
  const moves = heads.flatMap(({ id, title }) => {
    const path = of(id);
    return path === undefined ? [] : [{ title, path }];
  });
  return { legend: signsLegend(strings), downloads: whole, moves };
}

/** What the contents and the chapters offer to take along. */
export function downloadsIn({ downloads = [] }: SitePlace) {
  const paths = new Map(downloads.map(({ chapter, path }) => [chapter, path]));
  return {
    whole: downloads.filter(({ chapter }) => chapter === undefined),
    of: (id: string) => paths.get(id),
  };
}
