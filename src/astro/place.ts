import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroConfig } from 'astro';
import type { CourseInSite } from './options.ts';

/** Where a course stands in a site. */
export interface PlaceInSite extends CourseInSite {
  /** The path that its pages are served at: `/club/courses/italian/`. */
  readonly root: string;
  /** The whole address of that; absent where the site does not say its own. */
  readonly site?: string;
  /** Where its files are made, and kept for the next build. */
  readonly work: string;
}

/** @param config as all integrations have left it. */
export function placeIn(
  { base, site, cacheDir }: Pick<AstroConfig, 'base' | 'site' | 'cacheDir'>,
  course: CourseInSite,
): PlaceInSite {
  const root = `/${base}/${course.path}/`.replaceAll(/\/+/g, '/');
  return {
    ...course,
    root,
    ...(site !== undefined && { site: new URL(root, site).href.replace(/\/$/, '') }),
    work: path.join(fileURLToPath(cacheDir), 'linewright', course.path.replaceAll('/', '-')),
  };
}
