export { type CourseIndex, makeCourseIndex } from './course-index.ts';
export { type Asked, type CourseView, createCourseView } from './course-view.ts';
export type { PatternPlace } from './find-matches.ts';
export {
  answerQuestion,
  type LineEnd,
  moveAsked,
  patternAsked,
  placeName,
} from './questions.ts';
