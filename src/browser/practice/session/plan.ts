import { byImportance } from './importance.ts';
import { isDue, itemState } from './item-state.ts';
import type { Progress } from './overview.ts';
import type { CourseItem, PracticeCourse } from './practice-course.ts';
import { recentChapters } from './recent-chapters.ts';
import type { Task } from './session.ts';

/** So many moves are a session, and so many of them may be new ones. */
export const most = 12;
const mostNew = 8;

/** What could be done today with some moves of the course. */
export interface Plan {
  /** How many come back today, and for how many of those the course has other advice now. */
  readonly due: number;
  readonly changed: number;
  /** How many the reader has never met. */
  readonly unmet: number;
  /** A session: what comes back, filled up with what is new. */
  readonly tasks: readonly Task[];
  /** A session of that alone which comes back. */
  readonly back: readonly Task[];
  /** All that comes back, however much it is. */
  readonly allBack: readonly Task[];
  /** A session of what is known and not due, for who wants it all the same. */
  readonly ahead: readonly Task[];
}

/** `today` as `dayOf` counts, `now` in ms since 1970. */
export function planOf(
  course: PracticeCourse,
  items: readonly CourseItem[],
  progress: Progress,
  { today, now }: { readonly today: number; readonly now: number },
): Plan {
  const ordered = items.toSorted(byImportance(course, recentChapters(course, progress, now)));
  const due: Task[] = [];
  const unmet: Task[] = [];
  const ahead: Task[] = [];
  for (const { position, key, advice } of ordered) {
    const item = progress.get(key);
    const state = itemState(item, advice);
    if (state === 'unmet') unmet.push({ position, show: 'new' });
    else if (state === 'changed') due.push({ position, show: 'changed' });
    else if (isDue(item, advice, today)) due.push({ position });
    else ahead.push({ position });
  }
  const back = due.slice(0, most);
  const fresh = unmet.slice(0, Math.min(mostNew, most - back.length));
  return {
    due: due.length,
    changed: due.filter(({ show }) => show === 'changed').length,
    unmet: unmet.length,
    tasks: [...back, ...fresh],
    back,
    allBack: due,
    ahead: ahead.slice(0, most),
  };
}

/** Exactly these moves; what the reader has never met, or what has changed, is shown first. */
export function tasksFor(items: readonly CourseItem[], progress: Progress): readonly Task[] {
  return items.map(({ position, key, advice }) => {
    const state = itemState(progress.get(key), advice);
    if (state === 'unmet') return { position, show: 'new' };
    return state === 'changed' ? { position, show: 'changed' } : { position };
  });
}
