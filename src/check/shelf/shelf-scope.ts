import type { Place } from '../../diagnostics/index.ts';
import type { CourseProblem } from '../../model/index.ts';
import type { CourseEntry } from './course-entry.ts';

export interface ShelvedCourse {
  /** Relative to the shelf's folder, with `/`. */
  readonly folder: string;
  /** Where `shelf.yaml` names it. */
  readonly place: Place;
  readonly entry: CourseEntry;
}

/** What a rule of a shelf may look at. Its findings have paths that are relative to the shelf's folder. */
export interface ShelfScope {
  /** In the order of the shelf. */
  readonly courses: readonly ShelvedCourse[];
  /** What the reader could not make sense of in `shelf.yaml`. */
  readonly problems: readonly CourseProblem[];
}
