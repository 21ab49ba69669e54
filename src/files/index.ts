/** The files of a course: opened here and nowhere else, so that nothing outside it is ever read. */
export { copyCourseFile } from './copy-course-file.ts';
export { type ListedFile, listFolder } from './list-folder.ts';
export { isAt, openCourseFile } from './open-course-file.ts';
export { readCourseFile } from './read-course-file.ts';
export { FileRefusedError, type Refusal, refusals } from './refusals.ts';
export { replaceCourseFile } from './replace-course-file.ts';
