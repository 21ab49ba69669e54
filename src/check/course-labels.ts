import { createSuggester } from '../diagnostics/index.ts';
import type { Course } from '../model/index.ts';

interface Labels {
  readonly unplaced: ReadonlySet<string>;
  readonly nearest: (name: string) => string | undefined;
}

const known = new WeakMap<Course, Labels>();

function labelsOf(course: Course): Labels {
  const labels = known.get(course) ?? {
    unplaced: new Set(course.unplacedLabels),
    nearest: createSuggester(Object.keys(course.labels)),
  };
  known.set(course, labels);
  return labels;
}

/** Whether the course gives a name, be it where no position is shown, which has a finding of its own. */
export function isGiven(course: Course, name: string): boolean {
  return Object.hasOwn(course.labels, name) || labelsOf(course).unplaced.has(name);
}

/** The name of the course that another one is probably a slip of. */
export function nearestLabel(course: Course, name: string): string | undefined {
  return labelsOf(course).nearest(name);
}
