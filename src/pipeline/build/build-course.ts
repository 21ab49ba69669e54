import type { CheckedCourse } from '../../check/index.ts';
import { coursePart } from '../../publish/book/index.ts';
import { pgnPart } from '../../publish/pgn/index.ts';
import { buildSite, type SiteOptions, type SiteSummary, siteParts } from '../../site/index.ts';
import { cacheFolder } from '../cache-folder.ts';
import type { LazyCourse } from '../load-course.ts';
import { courseDownloads } from './downloads.ts';
import { judgeCourse } from './judge-course.ts';
import { keepMade } from './keep-made.ts';
import { keepParts } from './keep-parts.ts';
import { openMemory } from './site-memory.ts';

/** A course without errors, as it is loaded to be published. */
export type SoundCourse = LazyCourse & { readonly checked: CheckedCourse };

export interface CourseBuildOptions
  extends Pick<SiteOptions, 'out' | 'within' | 'base' | 'site' | 'onProgress'> {
  /** The course's folder. */
  readonly folder: string;
}

/**
 * Publishes the site of a course, with all that earlier builds have kept of it, and keeps the same for the next.
 * @throws UserError for what the author can mend; an earlier site then stands as it was.
 */
export async function buildCourse(
  loaded: SoundCourse,
  { folder, out, within, base, site, onProgress }: CourseBuildOptions,
): Promise<SiteSummary> {
  // Beside all other work; a fault that comes early is waited for all the same.
  const judged = judgeCourse(loaded.course, { cache: cacheFolder(), folder, print: loaded.print });
  judged.catch(() => {});
  const keep = keepMade(cacheFolder(), folder, loaded.edition());
  const makers = { book: coursePart(loaded.course, site), moves: pgnPart(site) };
  const parts = await keepParts(loaded.course, {
    cache: cacheFolder(),
    folder,
    print: loaded.print,
    face: loaded.face,
    makers: [...siteParts, makers.book, makers.moves],
  });
  const memory = await openMemory(cacheFolder(), folder, parts);
  const summary = await buildSite(loaded.checked, {
    out,
    within,
    folder,
    base,
    site,
    cacheDir: cacheFolder(),
    downloads: courseDownloads(loaded.checked, folder, {
      site,
      keep,
      parts,
      remembered: { memory, makers },
    }),
    parts,
    memory,
    // What it keeps names all that it was made of.
    keep: keepMade(cacheFolder(), folder, ''),
    beforePublishing: () => judged,
    onProgress,
  });
  await Promise.all([parts.save(), memory.save(), loaded.keepRead()]);
  return summary;
}
