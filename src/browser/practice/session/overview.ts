import type { Item } from '../store/item.ts';
import { isDue, itemState } from './item-state.ts';
import type { CourseItem, PracticeCourse } from './practice-course.ts';

export type Progress = ReadonlyMap<string, Item>;

/** How many moves stand where. */
export interface Tally {
  readonly all: number;
  readonly known: number;
  /** Met, but asked again within a week, or with changed advice. */
  readonly met: number;
  readonly due: number;
}

export function itemsOf(
  course: PracticeCourse,
  chapters: ReadonlySet<number>,
): readonly CourseItem[] {
  return course.items.filter((item) => item.chapters.some((chapter) => chapters.has(chapter)));
}

export function tallyOf(items: readonly CourseItem[], progress: Progress, today: number): Tally {
  const states = items.map(({ key, advice }) => itemState(progress.get(key), advice));
  const count = (wanted: string) => states.filter((state) => state === wanted).length;
  return {
    all: items.length,
    known: count('known'),
    met: count('met') + count('changed'),
    due: items.filter(({ key, advice }) => isDue(progress.get(key), advice, today)).length,
  };
}

/** How many positions the reader knows something of that the course does not ask now. */
export function restingOf(course: PracticeCourse, progress: Progress): number {
  const here = new Set(course.items.map(({ key }) => key));
  return [...progress.keys()].filter((key) => !here.has(key)).length;
}
