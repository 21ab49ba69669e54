import type { PracticeCourse } from './practice-course.ts';

/** The chapters that are practised: all but those whose tick the reader has taken away. */
export function chosenChapters({ table }: PracticeCourse): ReadonlySet<number> {
  const left = new Set(recall(table.course).split(' '));
  const chosen = table.chapters.flatMap(({ page }, index) => (left.has(page) ? [] : [index]));
  return new Set(chosen);
}

/** Kept by page, since chapters may be put in another order. */
export function rememberChapters({ table }: PracticeCourse, chosen: ReadonlySet<number>): void {
  const left = table.chapters.filter((_, index) => !chosen.has(index)).map(({ page }) => page);
  try {
    localStorage.setItem(name(table.course), left.join(' '));
  } catch {
    // A convenience: where nothing may be kept, all chapters have a tick the next time.
  }
}

function recall(course: string): string {
  try {
    return localStorage.getItem(name(course)) ?? '';
  } catch {
    return '';
  }
}

function name(course: string): string {
  return `practice:${course}:left-out`;
}
