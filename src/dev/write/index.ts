/** Writing by playing: the routes by which the pages of `dev` change the author's chapters. */
export type { CourseOnPages } from './find-place.ts';
export { writeRoutes } from './routes.ts';
