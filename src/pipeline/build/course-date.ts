import type { Course } from '../../model/index.ts';
import { dayOf, toldDate } from '../told-date.ts';

/**
 * When a course was last changed: the day that the author gives, else what the environment tells,
 * else the day of its latest news. All of these come along with a copy of the course; the dates of
 * its files do not.
 * @param given as `2026-11-25`.
 * @returns `undefined` where none of them is there.
 */
export function courseDate({ news }: Pick<Course, 'news'>, given?: string): Date | undefined {
  if (given !== undefined) return dayOf(given);
  const [latest] = news;
  return toldDate() ?? (latest && dayOf(latest.date));
}
