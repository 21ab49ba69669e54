import type { CourseSyntax } from '../read/index.ts';
import { assembleCourse } from './assemble-course.ts';
import { modelLimits } from './model-limits.ts';
import { playChapters } from './play/play-chapters.ts';
import type { Course } from './types.ts';

/** Builds the model of a course afresh. `src/workspace` keeps what it can of the one before. */
export function buildCourse(syntax: CourseSyntax, limits = modelLimits): Course {
  const { side } = syntax.settings;
  return assembleCourse(syntax, playChapters(syntax.chapters, { side, limits }), limits);
}
