import { dueDay, itemState } from './item-state.ts';
import type { Progress } from './overview.ts';
import type { CourseItem } from './practice-course.ts';

/** How many moves come back within some days. */
export interface Coming {
  /** The first and the last day, as `dayOf` counts; without a last one, from then on. */
  readonly from: number;
  readonly to?: number;
  readonly count: number;
}

/** Of what the reader has met: when it comes back, after today. Days without anything are left out. */
export function forecastOf(
  items: readonly CourseItem[],
  progress: Progress,
  today: number,
): readonly Coming[] {
  const days = items.flatMap(({ key, advice }) => {
    const item = progress.get(key);
    const state = itemState(item, advice);
    return item === undefined || state === 'changed' ? [] : [dueDay(item, today)];
  });
  const spans = [
    ...[1, 2, 3, 4, 5, 6].map((ahead) => ({ from: today + ahead, to: today + ahead })),
    { from: today + 7, to: today + 13 },
    { from: today + 14, to: today + 27 },
    { from: today + 28 },
  ];
  return spans.flatMap((span: Omit<Coming, 'count'>) => {
    const { from, to = Number.POSITIVE_INFINITY } = span;
    const count = days.filter((day) => day >= from && day <= to).length;
    return count === 0 ? [] : [{ ...span, count }];
  });
}
