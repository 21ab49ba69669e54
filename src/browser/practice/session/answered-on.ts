import type { Progress } from './overview.ts';
import type { PracticeCourse } from './practice-course.ts';

/** The positions, of some, that were answered on a day, in any tab. */
export function answeredOn(
  day: number,
  positions: ReadonlySet<number>,
  course: PracticeCourse,
  progress: Progress,
): ReadonlySet<number> {
  const answered = [...positions].filter((position) => {
    const item = course.itemAt.get(position);
    const kept = item && progress.get(item.key);
    return kept !== undefined && kept.last === day && item?.advice.includes(kept.advice);
  });
  return new Set(answered);
}
