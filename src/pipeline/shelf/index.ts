/** Several courses that make one site, opened one by one. */
export { buildShelf } from './build-shelf.ts';
export { keepCourse } from './keep-course.ts';
export { lookWithin } from './look-around.ts';
export { type CourseSeen, type OpenShelf, openShelf, type ShelvedCourse } from './open-shelf.ts';
export { textsOf } from './texts-of.ts';
