import type { Finding, Rule } from '../diagnostics/index.ts';
import type { Chapter, CourseAround } from '../model/index.ts';
import type { ShelfScope } from './shelf/shelf-scope.ts';
import type { CourseView } from './view/index.ts';

/** A chapter that is checked, and what may be asked of the course around it. */
export interface ChapterScope {
  readonly chapter: Chapter;
  readonly course: CourseView;
}

/** What is left to check when the chapters are. */
export interface CourseScope extends CourseAround {
  readonly course: CourseView;
}

/**
 * A rule about a course. What it finds in a chapter is kept until the chapter changes, or the answer to a
 * question that it asked of the rest of the course; so it must know nothing but its scope.
 */
export interface CourseRule extends Rule {
  /** Whether it speaks by what an engine said, which is not kept wherever a course is checked. */
  readonly byEngine?: true;
  readonly inChapter?: (scope: ChapterScope) => Iterable<Finding>;
  readonly inCourse?: (scope: CourseScope) => Iterable<Finding>;
  /** What several courses of a shelf show together: known only where the shelf is checked. */
  readonly inShelf?: (scope: ShelfScope) => Iterable<Finding>;
}

/** Gives the rule its type; nothing more. */
export function defineCourseRule(rule: CourseRule): CourseRule {
  return rule;
}
