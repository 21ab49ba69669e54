/** Publishes courses. A door of its own, since it loads what makes pages and books. */
export {
  buildCourse,
  type CourseBuild,
  type CourseBuildOptions,
  type SoundCourse,
} from './build-course.ts';
export { courseBook } from './course-book.ts';
export { courseDate } from './course-date.ts';
export { courseDownloads } from './downloads.ts';
export { keepMade } from './keep-made.ts';
