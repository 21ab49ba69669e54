import type { CheckedCourse } from '../../check/index.ts';
import type { BuiltCourse, ShelfLink } from '../../contract/index.ts';
import { coursePart } from '../../publish/book/index.ts';
import { pgnPart } from '../../publish/pgn/index.ts';
import {
  buildSite,
  describeBuilt,
  type SiteOptions,
  type SiteSummary,
  siteParts,
} from '../../site/index.ts';
import { cacheFolder } from '../cache-folder.ts';
import type { LazyCourse } from '../load-course.ts';
import { courseDownloads } from './downloads.ts';
import { judgeCourse } from './judge-course.ts';
import { keepMade } from './keep-made.ts';
import { type KeptPacked, openPacked } from './keep-packed.ts';
import { keepParts } from './keep-parts.ts';
import { openMemory } from './site-memory.ts';

/** A course without errors, as it is loaded to be published. */
export type SoundCourse = LazyCourse & { readonly checked: CheckedCourse };

export interface CourseBuildOptions
  extends Pick<
    SiteOptions,
    'out' | 'within' | 'base' | 'site' | 'offline' | 'onProgress' | 'onDrawing'
  > {
  readonly folder: string;
  /** Where it is built for a shelf: the way back, and the name of its folder there. */
  readonly shelf?: { readonly link: ShelfLink; readonly id: string } | undefined;
}

export interface CourseBuild extends SiteSummary {
  /** What the shelf's own pages show of it. */
  readonly onShelf?: BuiltCourse;
}

/**
 * Publishes the site of a course, using what earlier builds have kept, and keeps what the next can use.
 * @throws UserError for what the author can mend; the earlier site then stands.
 */
export async function buildCourse(
  loaded: SoundCourse,
  { folder, out, within, base, site, offline, shelf, ...on }: CourseBuildOptions,
): Promise<CourseBuild> {
  // Runs beside all other work; an early fault is still awaited.
  const judged = judgeCourse(loaded.course, { cache: cacheFolder(), folder, print: loaded.print });
  judged.catch(() => {});
  const main = await siteOf(loaded, { folder, as: folder, site });
  const languages = [];
  for (const { tag, as, loaded: translated } of loaded.languages) {
    const below = site === undefined ? undefined : `${site.replace(/\/+$/, '')}/${tag}`;
    const made = await siteOf(translated, { folder, as, site: below });
    languages.push({ tag, checked: translated.checked, ...made });
  }
  const summary = await buildSite(loaded.checked, {
    out,
    within,
    offline,
    folder,
    base,
    site,
    shelf: shelf?.link,
    cacheDir: cacheFolder(),
    ...main,
    languages,
    beforePublishing: () => judged,
    onProgress: on.onProgress,
    onDrawing: on.onDrawing,
  });
  const { parts, memory } = main;
  const onShelf =
    shelf &&
    describeBuilt(loaded.course, {
      ...{ id: shelf.id, files: summary.files, site, parts, memory },
      languages: languages.map(({ tag }) => tag),
    });
  for (const { save } of [main, ...languages]) await save();
  return { ...summary, ...(onShelf && { onShelf }) };
}

/** What makes the site in one language, and keeps that for the next build. */
async function siteOf(
  loaded: SoundCourse,
  {
    folder,
    as,
    site,
  }: {
    readonly folder: string;
    /** What it is kept by: the folder of the course, or of the translation. */
    readonly as: string;
    readonly site: string | undefined;
  },
) {
  const cache = cacheFolder();
  const makers = { book: coursePart(loaded.course, site), moves: pgnPart(site) };
  const parts = await keepParts(loaded.course, {
    cache,
    folder: as,
    print: loaded.print,
    face: loaded.face,
    makers: [...siteParts, makers.book, makers.moves],
  });
  const memory = await openMemory(cache, as, parts);
  let packed: KeptPacked | undefined;
  return {
    downloads: courseDownloads(loaded.checked, folder, {
      site,
      packed: async () => (packed = await openPacked(cache, as)),
      parts,
      remembered: { memory, makers },
    }),
    parts,
    memory,
    // Its entries name all that they were made of.
    keep: keepMade(cache, as, ''),
    /** One after the other, since each holds in memory what it writes. */
    async save() {
      await parts.save();
      await memory.save();
      await packed?.save();
      await loaded.keepRead();
    },
  };
}
