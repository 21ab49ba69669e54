import { forecastKey, writeForecast } from '../../contract/forecast.ts';
import type { Item } from './item.ts';
import type { PracticeCourse } from './practice-course.ts';
import { dueDay, isDue } from './standing.ts';

/** Leaves for the first page on which days moves of the course fall due. */
export function leaveForecast(
  { table, items }: PracticeCourse,
  progress: ReadonlyMap<string, Item>,
  today: number,
): void {
  const days = items.flatMap(({ key, advice }) => {
    const item = progress.get(key);
    if (item === undefined) return [];
    return [isDue(item, advice, today) ? today : dueDay(item, today)];
  });
  try {
    localStorage.setItem(forecastKey(table.course), writeForecast(days));
  } catch {
    // A convenience: where nothing may be kept, the first page says nothing of practice.
  }
}
