import type { Strings } from '../strings/index.ts';
import type { SiteData } from './site-data.ts';

/** A page of the site that is no chapter. */
export interface CoursePage {
  readonly file: string;
  readonly title: string;
}

/** The pages beside the chapters that this course has, as the contents and every head list them. */
export function coursePages(data: SiteData, strings: Strings): CoursePage[] {
  return [
    ...(data.notes === undefined ? [] : [{ file: 'practice.html', title: strings.practicePage }]),
    ...(data.news.length > 0 ? [{ file: 'changes.html', title: strings.changes.page }] : []),
    ...(data.positions.length > 0 ? [{ file: 'positions.html', title: strings.positions }] : []),
    { file: 'compare.html', title: strings.compare.title },
  ];
}
