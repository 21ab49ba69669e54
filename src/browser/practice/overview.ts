import type { Item } from './item.ts';
import type { CourseItem, PracticeCourse } from './practice-course.ts';
import type { Task } from './session.ts';
import { dueDay, isDue, standingOf } from './standing.ts';

export type Progress = ReadonlyMap<string, Item>;

/** How many moves stand where. */
export interface Tally {
  readonly all: number;
  readonly known: number;
  /** Seen, but asked again within a week, or with changed advice. */
  readonly learning: number;
  readonly unseen: number;
  readonly due: number;
}

/** What could be done today. */
export interface Today {
  readonly due: readonly Task[];
  /** Of those, how many have changed advice. */
  readonly changed: number;
  readonly fresh: readonly Task[];
  /** How many fall due tomorrow, and in the seven days from tomorrow. */
  readonly tomorrow: number;
  readonly week: number;
}

export function itemsOf(
  course: PracticeCourse,
  chapters: ReadonlySet<number>,
): readonly CourseItem[] {
  return course.items.filter((item) => item.chapters.some((chapter) => chapters.has(chapter)));
}

export function tallyOf(items: readonly CourseItem[], progress: Progress, today: number): Tally {
  const standings = items.map(({ key, advice }) => standingOf(progress.get(key), advice));
  const count = (wanted: string) => standings.filter((standing) => standing === wanted).length;
  return {
    all: items.length,
    known: count('known'),
    learning: count('learning') + count('changed'),
    unseen: count('new'),
    due: items.filter(({ key, advice }) => isDue(progress.get(key), advice, today)).length,
  };
}

export function todayOf(items: readonly CourseItem[], progress: Progress, today: number): Today {
  const due: Task[] = [];
  const fresh: Task[] = [];
  const ahead: number[] = [];
  for (const { position, key, advice } of items) {
    const item = progress.get(key);
    if (item === undefined) fresh.push({ position, show: 'new' });
    else if (standingOf(item, advice) === 'changed') due.push({ position, show: 'changed' });
    else if (isDue(item, advice, today)) due.push({ position });
    else ahead.push(dueDay(item, today) - today);
  }
  return {
    due,
    changed: due.filter(({ show }) => show === 'changed').length,
    fresh,
    tomorrow: ahead.filter((days) => days === 1).length,
    week: ahead.filter((days) => days <= 7).length,
  };
}

/** Items of positions that this edition does not advise a move in. */
export function restingOf(course: PracticeCourse, progress: Progress): number {
  const here = new Set(course.items.map(({ key }) => key));
  return [...progress.keys()].filter((key) => !here.has(key)).length;
}
