import type { PracticeCourse } from '../session/practice-course.ts';
import { answered } from '../session/schedule.ts';
import type { Outcome } from '../session/session.ts';
import type { Store } from './store.ts';

/** Keeps an answer: when its position comes again follows from it. */
export async function recordAnswer(
  { position, how }: Outcome,
  course: PracticeCourse,
  store: Store,
): Promise<void> {
  const item = course.itemAt.get(position);
  if (item === undefined) return;
  const now = Date.now();
  await store.change(item.key, (before) => answered(before, item, how, now));
}
