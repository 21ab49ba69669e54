import { constants, existsSync } from 'node:fs';
import { copyFile, mkdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegrationLogger } from 'astro';
import type { Course } from '../model/index.ts';
import { loadLazilyToPublish } from '../pipeline/index.ts';
import { findingsError, tellFindings } from './findings.ts';
import type { PlaceInSite } from './place.ts';
import { siteError } from './site-error.ts';

/** The pages of a course, made and not yet put into the site. */
export interface BuiltCourse {
  readonly place: PlaceInSite;
  readonly course: Course;
  /** Relative to the course, with `/`. */
  readonly files: readonly string[];
  readonly pages: number;
  /** Those of its pages that have the layout of the site, where it gives one. */
  readonly hosted: readonly string[];
}

/**
 * Checks a course and makes its pages, before the site is built.
 * @throws AstroUserError with all findings where it has an error.
 */
export async function buildBeside(
  place: PlaceInSite,
  logger: AstroIntegrationLogger,
): Promise<BuiltCourse> {
  const { folder, work, root, site, layout } = place;
  const loaded = await loadLazilyToPublish(folder);
  const { checked } = loaded;
  if (!checked) throw findingsError(place, loaded);
  tellFindings(loaded, logger);
  const { buildCourse } = await import('../pipeline/build/index.ts');
  const { hostedLookSheet } = await import('../site/index.ts');
  const { files, pages } = await buildCourse(
    { ...loaded, checked },
    // A page of the site changes without the course, and would be kept as it was.
    { out: work, folder, base: root, site, offline: layout === undefined },
  );
  const look = layout === undefined ? undefined : hostedLookSheet(loaded.course);
  if (look) await writeFile(path.join(work, look.path), look.content);
  const chapters = loaded.course.chapters.map(({ id }) => `${id}.html`);
  return {
    place,
    course: loaded.course,
    files: look ? [...files, look.path] : files,
    pages,
    hosted: layout === undefined ? [] : ['index.html', ...chapters],
  };
}

/** A page as it was made. */
export function builtPage({ place, hosted }: BuiltCourse, file: string): Promise<string> {
  if (!hosted.includes(file)) throw new Error(`${file} is no page of ${place.given.course}`);
  return readFile(path.join(place.work, file), 'utf8');
}

/**
 * Puts the pages of a course into the site that was built.
 * @throws AstroUserError where the site has a file of the same name.
 */
export async function putInto(
  { place, files, pages, hosted }: BuiltCourse,
  dir: URL,
  logger: AstroIntegrationLogger,
): Promise<void> {
  const { work, root, given } = place;
  const to = path.join(fileURLToPath(dir), place.path);
  const own = files.filter((file) => !hosted.includes(file));
  const taken = own.filter((file) => existsSync(path.join(to, file)));
  if (taken.length > 0) {
    const more = taken.length === 1 ? '' : ` and ${taken.length - 1} more`;
    throw siteError(
      `the site has a file of its own at ${place.path}/${taken[0]}${more}, where the course in \`${given.course}\` has one`,
      'give the course another `path`',
    );
  }
  for (const folder of new Set(own.map((file) => path.dirname(file)))) {
    await mkdir(path.join(to, folder), { recursive: true });
  }
  for (const file of own) {
    await copyFile(path.join(work, file), path.join(to, file), constants.COPYFILE_FICLONE);
  }
  for (const file of hosted) await alsoAt(to, file);
  logger.info(`${given.course}: ${pages} pages below ${root}`);
}

/**
 * Astro names the pages that it makes as the site wants it (`build.format`). The rest of the course leads to them by the
 * names that they have everywhere.
 */
async function alsoAt(folder: string, file: string): Promise<void> {
  const name = file.replace(/\.html$/, '');
  const made = name === 'index' ? `${folder}.html` : path.join(folder, name, 'index.html');
  const wanted = path.join(folder, file);
  if (!existsSync(wanted)) await copyFile(made, wanted);
}
