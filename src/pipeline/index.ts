/** Runs the stages: from a folder to a checked course, once or whenever its files change. */
export { cacheFolder } from './cache-folder.ts';
export { courseEdition } from './course-edition.ts';
export { type CourseSource, courseIn } from './course-source.ts';
export { readKeptResults, withKeptResults, writeKeptResults } from './kept-results.ts';
export {
  type FolderOptions,
  filesIn,
  type LanguageEdition,
  type LazyCourse,
  type LoadedCourse,
  type LoadOptions,
  loadCourse,
  loadFiles,
  loadForReaders,
  loadLazilyToPublish,
  loadToPublish,
  openToCheck,
  type Progress,
} from './load-course.ts';
export type { LookAround } from './shelf/look-around.ts';
export { type CourseWatch, watchCourse } from './watch-course.ts';
