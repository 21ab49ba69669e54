import type { Course } from '../model/index.ts';
import { dayOf, toldDate } from './told-date.ts';

/** What a course without news is dated: the first day that the files in a book can have (ZIP). */
const undated = '1980-01-01';

/**
 * When a course was last changed: the day that the author gives, else what the environment tells,
 * else the day of its latest news. All of these come along with a copy of the course; the dates of
 * its files do not.
 * @param given as `2026-11-25`.
 */
export function courseDate({ news }: Pick<Course, 'news'>, given?: string): Date {
  if (given !== undefined) return dayOf(given);
  return toldDate() ?? dayOf(news[0]?.date ?? undated);
}
