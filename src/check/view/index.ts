export { type CourseIndex, makeCourseIndex } from './course-index.ts';
export { type Asked, type CourseView, createCourseView } from './course-view.ts';
export { answerQuestion, type LineEnd, placeName } from './questions.ts';
