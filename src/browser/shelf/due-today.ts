import { type Plan, planOf } from '../practice/session/plan.ts';
import type { PracticeCourse } from '../practice/session/practice-course.ts';
import type { Task } from '../practice/session/session.ts';
import type { Item } from '../practice/store/item.ts';
import type { MergedCourse, MergedPart } from './merge-courses.ts';

export interface Practised {
  readonly part: MergedPart;
  readonly progress: ReadonlyMap<string, Item>;
}

/** What comes back today, over all courses. */
export interface DueToday {
  /** By positions of the merged course, one course after the other. */
  readonly tasks: readonly Task[];
  /** Positions that are due in other courses too with the same advice: they are asked once, and count in each. */
  readonly twins: ReadonlyMap<number, readonly number[]>;
  /** How many of the tasks the courses have other advice for now. */
  readonly changed: number;
}

export function dueToday(
  practised: readonly Practised[],
  clock: { readonly today: number; readonly now: number },
): DueToday {
  const tasks: Task[] = [];
  const twins = new Map<number, number[]>();
  const asked = new Map<string, number>();
  for (const { part, progress } of practised) {
    const { course, first } = part;
    for (const task of planIn(course, progress, clock).allBack) {
      const position = task.position + first;
      const item = course.itemAt.get(task.position);
      const name = [item?.key, ...(item?.advice ?? []).toSorted()].join('\n');
      const same = task.show === undefined ? asked.get(name) : undefined;
      if (same === undefined) {
        tasks.push({ ...task, position });
        if (task.show === undefined) asked.set(name, position);
      } else twins.set(same, [...(twins.get(same) ?? []), position]);
    }
  }
  return { tasks, twins, changed: tasks.filter(({ show }) => show === 'changed').length };
}

function planIn(
  course: PracticeCourse,
  progress: ReadonlyMap<string, Item>,
  clock: { readonly today: number; readonly now: number },
): Plan {
  return planOf(course, course.items, progress, clock);
}

/** Where an answer counts: in the course that was asked, and in those that have the same question. */
export function placesOf(
  position: number,
  { twins }: DueToday,
  { courseAt }: MergedCourse,
): ReturnType<MergedCourse['courseAt']>[] {
  return [position, ...(twins.get(position) ?? [])].map(courseAt);
}
