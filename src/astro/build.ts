import { constants, existsSync } from 'node:fs';
import { copyFile, mkdir } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegrationLogger } from 'astro';
import type { SoundCourse } from '../pipeline/build/index.ts';
import { loadLazilyToPublish } from '../pipeline/index.ts';
import { findingsError, tellFindings } from './findings.ts';
import type { PlaceInSite } from './place.ts';
import { siteError } from './site-error.ts';

/** A course that may be published. */
export interface BuiltCourse {
  readonly place: PlaceInSite;
  readonly sound: SoundCourse;
}

/**
 * Checks a course before the site is built.
 * @throws AstroError with all findings where it has an error.
 */
export async function checkToBuild(
  place: PlaceInSite,
  logger: AstroIntegrationLogger,
): Promise<BuiltCourse> {
  const loaded = await loadLazilyToPublish(place.folder);
  const { checked } = loaded;
  if (!checked) throw findingsError(place, loaded);
  tellFindings(loaded, logger);
  return { place, sound: { ...loaded, checked } };
}

/**
 * Puts the pages of a course into the site that was built.
 * @throws AstroError where the site has a file of the same name.
 */
export async function buildInto(
  { place, sound }: BuiltCourse,
  dir: URL,
  logger: AstroIntegrationLogger,
): Promise<void> {
  const { buildCourse } = await import('../pipeline/build/index.ts');
  const { work, folder, root, site, given } = place;
  const { files, pages } = await buildCourse(sound, { out: work, folder, base: root, site });
  const to = path.join(fileURLToPath(dir), place.path);
  const taken = files.filter((file) => existsSync(path.join(to, file)));
  if (taken.length > 0) {
    const more = taken.length === 1 ? '' : ` and ${taken.length - 1} more`;
    throw siteError(
      `the site has a file of its own at ${place.path}/${taken[0]}${more}, where the course in \`${given.course}\` has one`,
      'give the course another `path`',
    );
  }
  for (const folder of new Set(files.map((file) => path.dirname(file)))) {
    await mkdir(path.join(to, folder), { recursive: true });
  }
  for (const file of files) {
    await copyFile(path.join(work, file), path.join(to, file), constants.COPYFILE_FICLONE);
  }
  logger.info(`${given.course}: ${pages} pages below ${root}`);
}
