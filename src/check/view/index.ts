export { type CourseIndex, makeCourseIndex } from './course-index.ts';
export { type Asked, type CourseView, createCourseView } from './course-view.ts';
export {
  answerQuestion,
  type LineEnd,
  moveAsked,
  type PatternPlace,
  patternAsked,
  placeName,
} from './questions.ts';
