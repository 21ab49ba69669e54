import {
  type CheckedChapter,
  type CheckOptions,
  checkChapter,
  type makeCourseIndex,
  stillHolds,
} from '../check/index.ts';
import type { ChapterNow, UpdateOptions } from './chapter-now.ts';
import { heldFor, holdFor } from './kept/held-for.ts';
import { mergedChapter, type PlayedCourse, playWhere } from './play-current.ts';

/** The results of checking a course's chapters, in their order. */
export interface LaterChecks {
  /** Checks at the first call what a change touches. */
  readonly all: () => readonly CheckedChapter[];
  /** Undefined until somebody has called `all`. */
  readonly soFar: () => readonly CheckedChapter[] | undefined;
}

/** Checks a course at the first request, so that questions about moves do not wait for it. */
export function checkLater(
  chapters: readonly ChapterNow[],
  course: PlayedCourse,
  index: ReturnType<typeof makeCourseIndex>,
  {
    onProgress,
    answers,
    ...check
  }: CheckOptions &
    Pick<UpdateOptions, 'onProgress'> & {
      /** Gives `printAnswers`. */
      readonly answers: () => string;
    },
): LaterChecks {
  let checked: readonly CheckedChapter[] | undefined;
  return {
    all() {
      checked ??= checkWhatChanged();
      return checked;
    },
    soFar: () => checked,
  };

  function checkWhatChanged(): CheckedChapter[] {
    const now = answers();
    const holds = chapters.map(
      ({ kept }) =>
        kept !== undefined && (heldFor(kept.checked) === now || stillHolds(kept.checked, index)),
    );
    playWhere(chapters, ({ played }, at) => played === undefined && !holds[at], check.side);
    const all = holds.filter((isKept) => !isKept).length;
    let done = 0;
    const found = chapters.map((chapter, at): CheckedChapter => {
      if (chapter.kept && holds[at]) return chapter.kept.checked;
      onProgress?.(done++, all);
      const checked = checkChapter(mergedChapter(chapter, course), index, check);
      chapter.release();
      return checked;
    });
    for (const each of found) holdFor(each, now);
    return found;
  }
}
