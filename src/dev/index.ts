/** The preview of a course that its author works on: its pages with the scripts of the desk, served while files change. */
export { plainPage } from './plain-page.ts';
export { type CoursePreview, openPreview } from './preview-course.ts';
