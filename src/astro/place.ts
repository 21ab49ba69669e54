import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroConfig } from 'astro';
import type { CourseInSite } from './options.ts';

/** Where a course stands in a site. */
export interface PlaceInSite extends CourseInSite {
  /** The path that its pages are served at: `/club/courses/italian/`. */
  readonly root: string;
  /** As the site has it. */
  readonly trailingSlash: AstroConfig['trailingSlash'];
  /** The whole address of that; absent where the site does not say its own. */
  readonly site?: string;
  /** Where its files are made, and kept for the next build. */
  readonly work: string;
}

/** @param config as all integrations have left it. */
export function placeIn(
  {
    base,
    site,
    cacheDir,
    trailingSlash,
  }: Pick<AstroConfig, 'base' | 'site' | 'cacheDir' | 'trailingSlash'>,
  course: CourseInSite,
): PlaceInSite {
  const root = `/${base}/${course.path}/`.replaceAll(/\/+/g, '/');
  return {
    ...course,
    root,
    trailingSlash,
    ...(site !== undefined && { site: new URL(root, site).href.replace(/\/$/, '') }),
    work: path.join(fileURLToPath(cacheDir), 'linewright', course.path.replaceAll('/', '-')),
  };
}
