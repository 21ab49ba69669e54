import { defineRule, type Rule } from '../diagnostics/index.ts';
import type { Course } from '../model/index.ts';

export type CourseRule = Rule<Course>;

/** A rule about a course. */
export function defineCourseRule(rule: CourseRule): CourseRule {
  return defineRule(rule);
}
