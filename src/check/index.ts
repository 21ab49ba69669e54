export { type Advice, adviceOf, isMarkedBad } from './advice.ts';
export { type CheckResult, checkCourse } from './check-course.ts';
export type { CheckedCourse } from './checked-course.ts';
export type { CourseRule } from './course-rule.ts';
export { rules } from './rules.ts';
