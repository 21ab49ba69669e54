import { exercisesPage } from '../contract/index.ts';
import type { Strings } from '../strings/index.ts';
import type { CoursePage } from './site-data.ts';

/** What a course has beside its chapters. */
export interface CourseContents {
  /** Whether it advises moves, so that they can be practised. */
  readonly advice: boolean;
  /** Whether positions have names, or orders of moves meet. */
  readonly positions: boolean;
  readonly patterns: boolean;
  readonly exercises: boolean;
  readonly news: boolean;
}

/** The pages beside the chapters that a course has. */
export function coursePages(has: CourseContents, strings: Strings): CoursePage[] {
  const { pageNames } = strings.finding;
  return [
    ...(has.advice ? [{ file: 'practice.html', title: strings.practicePage, inHead: true }] : []),
    ...(has.exercises
      ? [{ file: exercisesPage, title: strings.exercises.page, inHead: true }]
      : []),
    { file: 'compare.html', title: pageNames.compare, inHead: true },
    { file: 'search.html', title: pageNames.search, inHead: true },
    { file: 'tree.html', title: pageNames.tree },
    ...(has.positions
      ? [{ file: 'positions.html', title: pageNames.positions, inHead: true }]
      : []),
    ...(has.patterns ? [{ file: 'patterns.html', title: pageNames.patterns }] : []),
    ...(has.news ? [{ file: 'changes.html', title: strings.changes.page }] : []),
    { file: 'notes.html', title: strings.freePage },
    { file: 'print.html', title: strings.handout.page },
    { file: 'signs.html', title: strings.signs.page, inHead: true },
  ];
}
