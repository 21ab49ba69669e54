/** The preview of a course that its author works on: its pages with the scripts of the desk, served while files change. */
export { answerFault, answerFile, answerMissing } from './answers.ts';
export { plainPage } from './plain-page.ts';
export { type CoursePreview, openPreview } from './preview-course.ts';
