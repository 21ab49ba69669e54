export { type Advice, adviceOf, isMarkedBad } from '../model/index.ts';
export { type ChapterSummary, summariseChapter } from './chapter-summary.ts';
export { type CheckedChapter, checkChapter, stillHolds } from './check-chapter.ts';
export {
  type CheckResult,
  checkCourse,
  checkOptions,
  passCourse,
  reportFindings,
} from './check-course.ts';
export type { CheckedCourse } from './checked-course.ts';
export { claimFixes } from './claim-fixes.ts';
export type { CourseRule } from './course-rule.ts';
export { type PreviewedCourse, previewCourse } from './previewed-course.ts';
export { readFacts } from './read-facts.ts';
export { rules } from './rules.ts';
export { makeCourseIndex } from './view/index.ts';
