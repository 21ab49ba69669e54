import type { Item } from '../store/item.ts';
import type { Progress } from './overview.ts';
import type { CourseItem } from './practice-course.ts';

export interface Score {
  readonly answers: number;
  readonly misses: number;
}

/** A week is seven days, the last of them today. */
const week = 7;

const weeksShown = 4;

const mostShown = 5;

/** The last weeks, this one first; each item remembers its last answers (`keptHistory`). */
export function weeksOf(
  items: readonly CourseItem[],
  progress: Progress,
  today: number,
): readonly Score[] {
  return Array.from({ length: weeksShown }, (_, index) =>
    scoreOf(items, progress, today - (index + 1) * week + 1, today - index * week),
  );
}

/** Between two days, both included. */
export function scoreOf(
  items: readonly CourseItem[],
  progress: Progress,
  from: number,
  to: number,
): Score {
  let answers = 0;
  let misses = 0;
  for (const { key } of items) {
    for (const [day, how] of progress.get(key)?.history ?? []) {
      if (day < from || day > to) continue;
      answers += 1;
      if (how === 'wrong' || how === 'shown') misses += 1;
    }
  }
  return { answers, misses };
}

/** A position that was missed, and what is kept of it. */
export interface Mistaken {
  readonly item: CourseItem;
  readonly kept: Item;
}

/** The positions that were missed most often, of those that were missed more than once. */
export function mostMissed(items: readonly CourseItem[], progress: Progress): readonly Mistaken[] {
  const missed = items.flatMap((item): Mistaken[] => {
    const kept = progress.get(item.key);
    return kept !== undefined && kept.misses > 1 && item.advice.includes(kept.advice)
      ? [{ item, kept }]
      : [];
  });
  return missed
    .sort((a, b) => b.kept.misses - a.kept.misses || b.kept.last - a.kept.last)
    .slice(0, mostShown);
}
