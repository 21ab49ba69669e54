/** Courses in an Astro site. Astro itself is the site's: this is loaded by nothing else of the package. */
export type { ChapterData, MoveData } from './chapter-schema.ts';
export { chapterSchema } from './chapter-schema.ts';
export { type CourseLoaderOptions, courseLoader } from './course-loader.ts';
export { hostedPage, hostedPaths, renderComponent } from './hosted.ts';
export { default } from './integration.ts';
export type { CourseOptions } from './options.ts';
