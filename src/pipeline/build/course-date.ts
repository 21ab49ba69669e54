import type { Course } from '../../model/index.ts';
import { dayOf, toldDate } from '../told-date.ts';

/**
 * The date of a course: the author's, else SOURCE_DATE_EPOCH, else that of the latest news. A copy of the course has the
 * same; the dates of its files would differ.
 * @param given as `2026-11-25`.
 */
export function courseDate({ news }: Pick<Course, 'news'>, given?: string): Date | undefined {
  if (given !== undefined) return dayOf(given);
  const [latest] = news;
  return toldDate() ?? (latest && dayOf(latest.date));
}
