import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Loader, LoaderContext } from 'astro/loaders';
import { type LoadedCourse, loadForReaders, loadToPublish } from '../pipeline/index.ts';
import { NoCourseError } from '../read/index.ts';
import { rootOf } from './bridge.ts';
import { chapterEntries, type EntryAddresses } from './chapter-entry.ts';
import { chapterSchema } from './chapter-schema.ts';
import { findingsError, tellFindings } from './findings.ts';
import { siteError } from './site-error.ts';

export interface CourseLoaderOptions {
  /** Folder of the course, from the root of the Astro project. */
  readonly course: string;
  /**
   * The address of a chapter's page. Unless said: where the integration puts it, and else the collection's name and the
   * chapter's, such as `/italian/main-line`.
   */
  readonly chapterAddress?: ((id: string) => string) | undefined;
}

/**
 * The chapters of a course as a collection, for `src/content.config.ts`:
 *
 *     const italian = defineCollection({ loader: courseLoader({ course: './my-course' }) });
 *
 * An error in the course stops the build; in `astro dev` the entries stay as they were.
 */
export function courseLoader(options: CourseLoaderOptions) {
  return {
    name: 'linewright',
    schema: chapterSchema,
    async load(context: LoaderContext): Promise<void> {
      const { config, logger, watcher } = context;
      const folder = path.resolve(fileURLToPath(config.root), options.course);
      const place = { folder, given: { course: options.course } };
      const read = async (load: (folder: string) => Promise<LoadedCourse>) => {
        try {
          return await load(folder);
        } catch (error) {
          if (!(error instanceof NoCourseError)) throw error;
          throw siteError(
            `the course in \`${options.course}\` cannot be read: ${error.message}`,
            '`course` names its folder, from the root of the Astro project',
          );
        }
      };
      const fill = async (loaded: LoadedCourse) => {
        const where = addressesIn(context, folder, options);
        context.store.clear();
        for (const { id, data, html, headings } of chapterEntries(loaded.course, where)) {
          context.store.set({
            id,
            data: await context.parseData({ id, data }),
            digest: context.generateDigest({ data, html }),
            rendered: { html, metadata: { headings: [...headings] } },
          });
        }
      };
      if (watcher === undefined) {
        const loaded = await read(loadToPublish);
        if (!loaded.checked) throw findingsError(place, loaded);
        return fill(loaded);
      }
      const follow = async () => {
        const loaded = await read(loadForReaders);
        if (loaded.checked) await fill(loaded);
        else tellFindings(loaded, logger);
      };
      await follow();
      watcher.add(folder);
      let later: NodeJS.Timeout | undefined;
      watcher.on('all', (_event, file) => {
        if (path.relative(folder, file).startsWith('..')) return;
        clearTimeout(later);
        later = setTimeout(() => {
          follow().catch((error: unknown) => logger.error(String(error)));
        }, together);
      });
    },
  } satisfies Loader;
}

/** In milliseconds: changes that come as close together as this are one. */
const together = 100;

function addressesIn(
  { config, collection }: LoaderContext,
  folder: string,
  { chapterAddress }: CourseLoaderOptions,
): EntryAddresses {
  const root = rootOf(folder);
  const inSite = `${config.base}/${collection}/`.replaceAll(/\/+/g, '/');
  const ending = config.trailingSlash === 'always' ? '/' : '';
  return {
    chapter: chapterAddress ?? ((id) => (root ? `${root}${id}.html` : `${inSite}${id}${ending}`)),
    file: (file) => (root ?? '') + file,
  };
}
