import {
  type ChapterSummary,
  type CourseEntry,
  linksOf,
  makeCourseEntry,
  type makeCourseIndex,
  placesOnShelf,
  rulesOfShelf,
} from '../check/index.ts';
import type { CourseFiles, CourseFrame, PlaceOnShelf } from '../read/index.ts';

/** A course as one of a shelf. */
export interface OnShelf {
  /** Where its links into other courses lead. */
  readonly siblings: Readonly<Record<string, PlaceOnShelf>> | undefined;
  /** What the others may know of it. */
  readonly entry: () => CourseEntry;
}

/** @param drafts gives the files that are drafts, called when needed. */
export function onShelf(
  files: Pick<CourseFiles, 'shelf' | 'translation'>,
  { settings, news = [] }: Pick<CourseFrame, 'settings' | 'news'>,
  summaries: readonly ChapterSummary[],
  index: ReturnType<typeof makeCourseIndex>,
  drafts: () => readonly string[],
): OnShelf {
  return {
    siblings: placesOnShelf(files, linksOf({ summaries, news })),
    entry: () =>
      makeCourseEntry(
        { settings, summaries, index, news, drafts: new Set(drafts()) },
        rulesOfShelf,
      ),
  };
}
