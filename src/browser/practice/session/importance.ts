import { pathsOf } from '../../../lookup/index.ts';
import type { CourseItem, PracticeCourse } from './practice-course.ts';

const known = new WeakMap<PracticeCourse, ReadonlyMap<number, number>>();

/**
 * How much of a course hangs on each asked position: how many asked positions stand behind its advice, itself among
 * them, by position. What more depends on is met more often.
 */
export function weightsOf(course: PracticeCourse): ReadonlyMap<number, number> {
  const weights = known.get(course) ?? weigh(course);
  known.set(course, weights);
  return weights;
}

function weigh(course: PracticeCourse): Map<number, number> {
  const paths = pathsOf(course.table);
  const weights = new Map(course.items.map(({ position }) => [position, 1]));
  for (const { position } of course.items) {
    for (let last = paths.last(position); last !== undefined; last = paths.last(last.from)) {
      const weight = weights.get(last.from);
      // What another move of the same position leads to does not hang on its advice.
      if (weight !== undefined && last.move.kind === 'advice') weights.set(last.from, weight + 1);
    }
  }
  return weights;
}

/**
 * The order in which moves are taken into a session: first those of the chapters that were read or practised last, then
 * those on which more hangs, then as the course has them.
 */
export function byImportance(
  course: PracticeCourse,
  recent: ReadonlySet<number>,
): (a: CourseItem, b: CourseItem) => number {
  const weights = weightsOf(course);
  const rank = (item: CourseItem) => (item.chapters.some((chapter) => recent.has(chapter)) ? 0 : 1);
  const weight = ({ position }: CourseItem) => weights.get(position) ?? 0;
  return (a, b) => rank(a) - rank(b) || weight(b) - weight(a) || a.position - b.position;
}
