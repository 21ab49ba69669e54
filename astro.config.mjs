/**
 * How Astro makes the pages of a course. Folders depend on the build and are added by
 * `src/site/build/astro-process.ts`; the pages are in `src/site`.
 */
export default {
  output: 'static',
  // Files and no folders: any static host serves them, and so does a double-click.
  build: { format: 'file' },
  trailingSlash: 'ignore',
  logLevel: 'error',
  devToolbar: { enabled: false },
};
