import type { CourseFrame } from '../../read/index.ts';
import type { Course, CourseProblem } from '../types.ts';
import { showBoards } from './show-boards.ts';

/** What a course has beside its chapters. */
export type CourseAround = Pick<
  Course,
  'settings' | 'settingPlaces' | 'missingId' | 'news' | 'siblings' | 'theme' | 'problems'
>;

/**
 * What a course has beside its chapters, with all problems that are not a chapter's own.
 * @param unsought what `findUnsought` reports of the chapters.
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
