/** Courses in an Astro site. Astro itself is the site's: this is loaded by nothing else of the package. */
export { hostedPage, hostedPaths } from './hosted.ts';
export { default } from './integration.ts';
export type { CourseOptions } from './options.ts';
