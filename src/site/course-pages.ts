import type { Strings } from '../strings/index.ts';
import type { SiteData } from './site-data.ts';

/** A page of the site that is no chapter. */
export interface CoursePage {
  readonly file: string;
  readonly title: string;
}

/** The pages beside the chapters that this course has, as the contents and every head list them. */
export function coursePages(data: SiteData, { finding }: Strings): CoursePage[] {
  const { positions, transpositions, patterns, news } = data;
  return [
    { file: 'search.html', title: finding.pageNames.search },
    { file: 'tree.html', title: finding.pageNames.tree },
    ...(positions.length + transpositions.length > 0
      ? [{ file: 'positions.html', title: finding.pageNames.positions }]
      : []),
    ...(patterns.length > 0 ? [{ file: 'patterns.html', title: finding.pageNames.patterns }] : []),
    ...(news.length > 0 ? [{ file: 'changes.html', title: finding.pageNames.news }] : []),
  ];
}
