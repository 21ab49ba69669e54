import { readingKey, readKeptReading } from '../../../contract/kept-reading.ts';
import { keptText } from '../../kept-text.ts';
import { credibleTime } from '../store/item.ts';
import type { Progress } from './overview.ts';
import type { PracticeCourse } from './practice-course.ts';

/** The chapter that the reader was in last, and those of the answer that was given last. `now` in ms since 1970. */
export function recentChapters(
  course: PracticeCourse,
  progress: Progress,
  now: number,
): ReadonlySet<number> {
  const { chapters } = course.table;
  const read = readKeptReading(keptText(readingKey(course.table.course))).last?.chapter;
  const recent = new Set(practisedLast(course, progress, now));
  chapters.forEach(({ page }, index) => {
    if (page === `${read}.html`) recent.add(index);
  });
  return recent;
}

function practisedLast(course: PracticeCourse, progress: Progress, now: number): readonly number[] {
  let last = 0;
  let chapters: readonly number[] = [];
  for (const item of course.items) {
    const kept = progress.get(item.key);
    const at = kept === undefined ? 0 : credibleTime(kept, now);
    if (at > last) {
      last = at;
      chapters = item.chapters;
    }
  }
  return chapters;
}
