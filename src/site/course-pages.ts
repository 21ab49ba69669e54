import type { Strings } from '../strings/index.ts';
import type { SiteData } from './site-data.ts';

/** A page of the site that is no chapter. */
export interface CoursePage {
  readonly file: string;
  readonly title: string;
}

/** The pages beside the chapters that this course has, as the contents and every head list them. */
export function coursePages(data: SiteData, strings: Strings): CoursePage[] {
  const { positions, transpositions, patterns, news, notes } = data;
  const { pageNames } = strings.finding;
  return [
    ...(notes === undefined ? [] : [{ file: 'practice.html', title: strings.practicePage }]),
    { file: 'compare.html', title: pageNames.compare },
    { file: 'search.html', title: pageNames.search },
    { file: 'tree.html', title: pageNames.tree },
    ...(positions.length + transpositions.length > 0
      ? [{ file: 'positions.html', title: pageNames.positions }]
      : []),
    ...(patterns.length > 0 ? [{ file: 'patterns.html', title: pageNames.patterns }] : []),
    ...(news.length > 0 ? [{ file: 'changes.html', title: pageNames.news }] : []),
    { file: 'print.html', title: strings.handout.page },
  ];
}
