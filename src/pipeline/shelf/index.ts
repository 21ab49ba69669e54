/** Several courses that make one site, opened one after the other. */
export { buildShelf, type ShelfBuild } from './build-shelf.ts';
export { entryOf } from './entry-of.ts';
export { type CourseKeeper, keepCourse } from './keep-course.ts';
export { lookWithin } from './look-around.ts';
export {
  type CourseSeen,
  type OpenShelf,
  openShelf,
  type ShelfFindings,
  type ShelvedCourse,
} from './open-shelf.ts';
export { textsOf } from './texts-of.ts';
