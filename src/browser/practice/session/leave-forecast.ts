import {
  type ChapterProgress,
  chapterProgressKey,
  courseProgressKey,
  forecastKey,
  writeForecast,
} from '../../../contract/forecast.ts';
import type { Item } from '../store/item.ts';
import { dueDay, isDue } from './item-state.ts';
import { itemsOf, tallyOf } from './overview.ts';
import type { CourseItem, PracticeCourse } from './practice-course.ts';

/** Leaves for the first page on which days moves of the course fall due, and how its chapters stand. */
export function leaveForecast(
  course: PracticeCourse,
  progress: ReadonlyMap<string, Item>,
  today: number,
): void {
  const daysOf = (items: readonly CourseItem[]) =>
    items.flatMap(({ key, advice }) => {
      const item = progress.get(key);
      if (item === undefined) return [];
      return [isDue(item, advice, today) ? today : dueDay(item, today)];
    });
  const { table, items } = course;
  const chapters = table.chapters.map(({ page }, index): [string, ChapterProgress] => {
    const its = itemsOf(course, new Set([index]));
    const { known, all } = tallyOf(its, progress, today);
    return [page.replace(/\.html$/, ''), { known, all, due: writeForecast(daysOf(its)) }];
  });
  const { known, all } = tallyOf(items, progress, today);
  try {
    localStorage.setItem(courseProgressKey(table.course), JSON.stringify({ known, all }));
    localStorage.setItem(forecastKey(table.course), writeForecast(daysOf(items)));
    localStorage.setItem(
      chapterProgressKey(table.course),
      JSON.stringify(Object.fromEntries(chapters)),
    );
  } catch {
    // A convenience: where nothing may be kept, the first page says nothing of practice.
  }
}
