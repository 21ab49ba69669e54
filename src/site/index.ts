/** The site: a checked course becomes a folder of static files. */
import { mkdir, rename, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { CheckedCourse } from '../check/index.ts';
import { copyPlainFile } from '../files/index.ts';
import { findMediaFault } from '../media/index.ts';
import type { Course } from '../model/index.ts';
import { listFiles, prepareOutput, replaceFolder } from '../output/index.ts';
import { stringsFor } from '../strings/index.ts';
import { copyAssets, readAssets } from './build/assets.ts';
import { writeEmbedScript } from './build/embed-script.ts';
import { writeImages } from './build/images.ts';
import { type AstroProcess, startAstro } from './build/start-astro.ts';
import { wordIndexFolder, writeWordIndex } from './build/word-index.ts';
import { writeWorker } from './offline/write-worker.ts';
import { renderSite } from './render/site.ts';
import type { Download } from './site-data.ts';
import { SiteError } from './site-error.ts';
import { sitemapFiles } from './sitemap.ts';

export { SiteError } from './site-error.ts';

export interface SiteOptions {
  /** Folder that the site replaces: missing, empty, or an earlier build. Never one around the course. */
  readonly out: string;
  /** The course's folder, whose `media/` is copied. */
  readonly folder?: string | undefined;
  /** Path on the host, such as `/courses/tarrasch/`. Only the page for missing addresses needs it. */
  readonly base?: string | undefined;
  /** Address of the site; else the course's own setting. */
  readonly site?: string | undefined;
  /** Whether readers keep the course for reading offline; so it is unless said. */
  readonly offline?: boolean | undefined;
  /** Folder of finished images, kept between builds. */
  readonly cacheDir?: string | undefined;
  /** Files that readers may take along; the contents page names them. */
  readonly downloads?: readonly SiteDownload[] | undefined;
  readonly onProgress?: ((progress: SiteProgress) => void) | undefined;
  /** Waited for when the site is whole: what it throws leaves the earlier one in its place. */
  readonly beforePublishing?: (() => Promise<unknown>) | undefined;
}

/** A file made of the whole course, for other programs and for reading elsewhere. */
export interface SiteDownload extends Download {
  readonly make: () => Promise<Uint8Array>;
}

export interface SiteProgress {
  readonly stage: 'text' | 'pages' | 'images' | 'done';
  readonly done: number;
  readonly all: number;
}

export interface SiteSummary {
  readonly pages: number;
  readonly images: number;
  /** Why there is no index for the search by words; absent where there is one. */
  readonly noWordIndex?: string;
  /** Every file, relative to the output, with `/`, sorted. */
  readonly files: readonly string[];
  /** What stood in the output, was written by no build, and was kept; relative to it, sorted. */
  readonly carried: readonly string[];
  /** What a reader's browser keeps for reading offline, and the files too large for that. */
  readonly kept: { readonly bytes: number; readonly left: readonly string[] };
}

/**
 * Builds the site of a course. The previous output stands untouched until the new one is whole,
 * and is then replaced in one step. A process from `startAstro`, started while the course was
 * read, saves the time that Astro takes to load; the caller stops it.
 * @throws UserError for what the author can mend; the message says what, the hint how.
 */
export async function buildSite(
  checked: CheckedCourse,
  options: SiteOptions,
  astro?: AstroProcess,
): Promise<SiteSummary> {
  if (astro !== undefined) return buildWith(astro, checked, options);
  const started = await startAstro();
  return buildWith(started, checked, options).finally(() => started.stop());
}

async function buildWith(
  astro: AstroProcess,
  { course }: CheckedCourse,
  options: SiteOptions,
): Promise<SiteSummary> {
  const out = await prepareOutput(options.out, options.folder);
  const { onProgress } = options;
  const media = mediaOf(course);
  if (options.folder !== undefined) await refuseUnfit(media, options.folder);
  onProgress?.({ stage: 'text', done: 0, all: course.chapters.length });
  const rendered = renderSite(course, {
    assets: await readAssets(),
    site: options.site ?? course.settings.site,
    base: options.base,
    downloads: (options.downloads ?? []).map(({ kind, path }) => ({ kind, path })),
    offline: options.offline ?? true,
  });
  onProgress?.({ stage: 'pages', done: 0, all: course.chapters.length });
  // Astro empties its folder first: what is made at the same time goes beside it.
  const [made, images, noWordIndex] = await Promise.all([
    astro.build(rendered.data),
    writeImages(course, rendered.embeds, astro.work, {
      cacheDir: options.cacheDir,
      onDone: (done, all) => onProgress?.({ stage: 'images', done, all }),
    }),
    writeWordIndex(rendered.data, astro.work),
  ]);
  await rename(join(astro.work, 'images'), join(made, 'images'));
  if (noWordIndex === undefined) {
    await rename(join(astro.work, wordIndexFolder), join(made, wordIndexFolder));
  }
  await copyAssets(made);
  for (const { path, content } of rendered.files) {
    await mkdir(dirname(join(made, path)), { recursive: true });
    await writeFile(join(made, path), content);
  }
  await writeEmbedScript(made, rendered.data.assets, stringsFor(course.settings.language));
  for (const { path, make } of options.downloads ?? []) {
    await mkdir(dirname(join(made, path)), { recursive: true });
    await writeFile(join(made, path), await make());
  }
  if (options.folder !== undefined) await copyMedia(media, options.folder, made);
  const { site } = rendered.data;
  if (site !== undefined) {
    for (const { path, content } of sitemapFiles(site, await listFiles(made))) {
      await writeFile(join(made, path), content);
    }
  }
  // Last, since it lists all that was written.
  const kept = rendered.data.offline
    ? await writeWorker(made, await listFiles(made))
    : { bytes: 0, left: [] };
  const files = await listFiles(made);
  await options.beforePublishing?.();
  const carried = await replaceFolder(made, out);
  const pages = files.filter((file) => file.endsWith('.html')).length;
  onProgress?.({ stage: 'done', done: pages, all: pages });
  return {
    pages,
    images: images.length,
    ...(noWordIndex !== undefined && { noWordIndex }),
    files,
    carried,
    kept,
  };
}

/** The files of `media/` that chapters and news show or hand out. */
function mediaOf({ chapters, news }: Course): ReadonlySet<string> {
  return new Set([...chapters, ...news].flatMap(({ media }) => media));
}

/** A course may have been read without a look into them, and they may have changed since. */
async function refuseUnfit(media: ReadonlySet<string>, folder: string): Promise<void> {
  for (const file of media) {
    const fault = await findMediaFault(folder, file);
    if (fault) throw new SiteError(fault.message, fault.hint);
  }
}

async function copyMedia(media: ReadonlySet<string>, folder: string, out: string): Promise<void> {
  for (const file of media) await copyPlainFile(folder, file, join(out, file));
}
