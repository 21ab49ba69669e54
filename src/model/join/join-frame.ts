import type { CourseFrame } from '../../read/index.ts';
import type { Course, CourseProblem } from '../types.ts';
import { showBoards } from './show-boards.ts';

/** Everything of a course but its chapters and pages. */
export type CourseAround = Pick<
  Course,
  'settings' | 'settingPlaces' | 'missingId' | 'news' | 'siblings' | 'theme' | 'problems'
>;

/**
 * Everything of a course but its chapters and pages, with all problems that belong to no chapter.
 * @param unsought the problems that `findUnsought` reports.
 */
export function joinFrame(frame: CourseFrame, unsought: readonly CourseProblem[]): CourseAround {
  const { settings, settingPlaces, missingId, news = [], siblings, theme, problems } = frame;
  const shown = news.map((entry) => showBoards(entry, settings.side));
  return {
    settings,
    settingPlaces,
    ...(missingId && { missingId }),
    ...(siblings && { siblings }),
    ...(theme && { theme }),
    news: shown
      .map(({ news }) => news)
      .sort((a, b) => (b.date + b.name > a.date + a.name ? 1 : -1)),
    problems: [...problems, ...unsought, ...shown.flatMap((entry) => entry.problems)],
  };
}
