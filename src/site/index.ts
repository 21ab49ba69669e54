/** The site: a checked course becomes a folder of static files. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { CheckedCourse } from '../check/index.ts';
import type { ShelfLink } from '../contract/index.ts';
import { copyPlainFile } from '../files/index.ts';
import type { Course } from '../model/index.ts';
import {
  listFiles,
  makeTemporaryFolder,
  prepareOutput,
  type Replacement,
  replaceFolder,
} from '../output/index.ts';
import type { PartMaker, Parts } from '../render/index.ts';
import { stringsFor } from '../strings/index.ts';
import { copyAssets, readAssets } from './build/assets.ts';
import { embedScriptFile } from './build/embed-script.ts';
import { courseIcons, coursePictures, writeImages } from './build/images.ts';
import { readOwnIcon } from './build/own-icon.ts';
import { renderPage } from './build/render-page.ts';
import { openRecord } from './build/site-record.ts';
import { type SiteWriter, siteWriter, writerBelow } from './build/site-writer.ts';
import { NoWordIndex } from './build/word-index.ts';
import { type WordIndexes, wordIndexes } from './build/word-indexes.ts';
import { siteLanguages } from './languages.ts';
import { mediaOf, refuseUnfit } from './media-of.ts';
import { writeWorker } from './offline/write-worker.ts';
import { kindsPart } from './render/block-kinds.ts';
import { pagePart } from './render/chapter-page.ts';
import { picturesPart } from './render/chapter-pictures.ts';
import { exercisePart } from './render/course-exercises.ts';
import { notesPart } from './render/course-notes.ts';
import { entriesPart } from './render/exercise-entries.ts';
import { workPart } from './render/first-page.ts';
import { paperPart } from './render/handout/paper-part.ts';
import type { FileGroup, RenderedSite, SiteMemory } from './render/rendered-site.ts';
import { renderSite } from './render/site.ts';
import { placesPart } from './render/table-places.ts';
import type { Keep, SiteDownload, SitePlace } from './site-data.ts';
import { sitemapFiles } from './sitemap.ts';

export { hostedThemeSheet, isThemeSheet } from '../contract/index.ts';
export { assetsFolder, readAssets } from './build/assets.ts';
export { deskFindings } from './desk/desk-findings.ts';
export { escapeHtml } from './escape-html.ts';
export { hostedWords, lineScriptFile } from './hosted.ts';
export { languagesOf } from './languages.ts';
export { previewSite, type SitePreview } from './preview.ts';
export { type Embed, findEmbeds } from './render/embed/embeds.ts';
export { hostedLookSheet } from './render/look-files.ts';
export type { SiteMemory } from './render/rendered-site.ts';
export { describeBuilt } from './shelf/describe-built.ts';
export { writeShelfPages } from './shelf/write-shelf-pages.ts';
export type { Keep, SiteDownload } from './site-data.ts';

/** What a site takes from each chapter. */
export const siteParts: readonly PartMaker<unknown>[] = [
  pagePart,
  paperPart,
  exercisePart,
  workPart,
  kindsPart,
  placesPart,
  notesPart,
  picturesPart,
  entriesPart,
];

export interface SiteOptions {
  /** Folder that the site replaces: missing, empty, or an earlier build. Never one around the course. */
  readonly out: string;
  /**
   * The larger site that this one is a part of, and its path there; it then replaces nothing by itself, and `out` is its
   * real path in the earlier site.
   */
  readonly within?: { readonly site: Replacement; readonly path: string } | undefined;
  /** The course's folder, whose `media/` is copied. */
  readonly folder?: string | undefined;
  /** Path on the host, such as `/courses/tarrasch/`. Only the page for missing addresses needs it. */
  readonly base?: string | undefined;
  /** Address of the site; default: the course's `site`. */
  readonly site?: string | undefined;
  /** Whether readers can read offline; default true. */
  readonly offline?: boolean | undefined;
  /** The shelf that the course stands on, to which its pages lead back. */
  readonly shelf?: ShelfLink | undefined;
  /** Folder of finished images, kept between builds. */
  readonly cacheDir?: string | undefined;
  /** Downloads, listed on the contents page. */
  readonly downloads?: readonly SiteDownload[] | undefined;
  /** Parts of chapters; default: made anew. */
  readonly parts?: Parts | undefined;
  /** What earlier builds left: files that would be the same are not made again. */
  readonly memory?: SiteMemory | undefined;
  readonly keep?: Keep | undefined;
  /** The course in other languages, each below its tag. */
  readonly languages?: readonly LanguageSite[] | undefined;
  readonly onProgress?: ((progress: SiteProgress) => void) | undefined;
  /** Called before processes are started that draw pictures: none is, where they are kept. */
  readonly onDrawing?: (() => void) | undefined;
  /** Awaited when the site is whole; if it throws, the earlier site stays. */
  readonly beforePublishing?: (() => Promise<unknown>) | undefined;
}

/** The course in another language, with what makes its pages. */
export interface LanguageSite extends Pick<SiteOptions, 'downloads' | 'parts' | 'memory' | 'keep'> {
  /** BCP 47. */
  readonly tag: string;
  readonly checked: CheckedCourse;
}

export interface SiteProgress {
  readonly stage: 'text' | 'pages' | 'images' | 'done';
  readonly done: number;
  readonly all: number;
}

export interface SiteSummary {
  readonly pages: number;
  readonly images: number;
  /** Why there is no index of words, if there is none. */
  readonly noWordIndex?: string;
  /** Every file, relative to the output, with `/`, sorted. */
  readonly files: readonly string[];
  /** Files in the output that no build wrote, which were kept; relative to it, sorted. */
  readonly carried: readonly string[];
  /** What browsers keep for reading offline, and the files too large for that. */
  readonly kept: { readonly bytes: number; readonly left: readonly string[] };
  /** Records the output for the next build; for a part, call it when the whole stands. */
  readonly remember: () => Promise<void>;
}

/**
 * Builds the site of a course. The previous output stays until the new one is whole, then is replaced in one step.
 * @throws UserError for what the author can mend.
 */
export async function buildSite(
  original: CheckedCourse,
  options: SiteOptions,
): Promise<SiteSummary> {
  const { course } = original;
  const { within } = options;
  const out = within ? options.out : await prepareOutput(options.out, options.folder);
  const work = await makeTemporaryFolder();
  try {
    const made = join(work.path, 'site');
    await mkdir(made);
    const record =
      options.memory && options.cacheDir !== undefined
        ? await openRecord(options.cacheDir, out)
        : undefined;
    const writer = siteWriter(made, record);
    const others = options.languages ?? [];
    const languages = siteLanguages(original, others);
    const { images, noWordIndex, kept } = await makeSite(course, made, writer, {
      ...options,
      languages,
    });
    for (const other of others) {
      await makeSite(other.checked.course, join(made, other.tag), writerBelow(writer, other.tag), {
        ...inLanguage(options, other),
        languages,
      });
    }
    const site = options.site ?? course.settings.site;
    if (site !== undefined) {
      for (const { path, content } of sitemapFiles(site, await listSite(made, writer), languages)) {
        await writeFile(join(made, path), content);
      }
    }
    const files = await listSite(made, writer);
    await options.beforePublishing?.();
    const remember = async () => record?.save(writer.files, writer.groups);
    let carried: readonly string[] = [];
    if (within) await within.site.put(made, within.path, writer.kept);
    else {
      carried = await replaceFolder(made, out, writer.kept);
      await remember();
    }
    const pages = files.filter((file) => file.endsWith('.html')).length;
    options.onProgress?.({ stage: 'done', done: pages, all: pages });
    return {
      pages,
      images,
      ...(noWordIndex !== undefined && { noWordIndex }),
      files,
      carried,
      kept,
      remember,
    };
  } finally {
    await work.remove();
  }
}

/** How a site is made in another language: what it says of its place is below that of the original. */
function inLanguage(
  { base, site, shelf, ...options }: SiteOptions,
  { tag, checked: _, ...own }: LanguageSite,
): SiteOptions {
  return {
    ...options,
    ...own,
    ...(shelf && { shelf: { ...shelf, href: `../${shelf.href}` } }),
    ...(base !== undefined && { base: `${base.replace(/\/*$/, '/')}${tag}/` }),
    ...(site !== undefined && { site: `${site.replace(/\/+$/, '')}/${tag}` }),
  };
}

type MakeOptions = Omit<SiteOptions, 'languages'> & Pick<SitePlace, 'languages'>;

/** Writes the whole site of one language into an empty folder. */
async function makeSite(course: Course, made: string, writer: SiteWriter, options: MakeOptions) {
  const { onProgress, folder } = options;
  const media = mediaOf(course);
  if (folder !== undefined) await refuseUnfit(media, folder);
  onProgress?.({ stage: 'text', done: 0, all: course.chapters.length });
  const place = {
    assets: await readAssets(),
    site: options.site ?? course.settings.site,
    base: options.base,
    downloads: (options.downloads ?? []).map(({ make: _, print: __, ...download }) => download),
    offline: options.offline ?? true,
    shelf: options.shelf,
    ...(options.languages && { languages: options.languages }),
    icon: await readOwnIcon(course, folder),
  };
  const site = renderSite(course, place, options.parts, options.memory);
  const { frame } = site;
  const drawing = writePictures(course, site, writer, { ...options, icon: place.icon });
  // Awaited below; until then a fault must not count as unhandled.
  drawing.catch(() => {});
  const keep = options.keep ?? ((_kind, _inputs, make) => make());
  const words = wordIndexes(frame.language, course.chapters.length);
  await writePages(site, writer, options);
  for (const page of site.documentPages) words.add(page);
  const indexing = writeWordIndex(words, keep, writer);
  indexing.catch(() => {});
  for (const group of site.files) await writeGroup(group, writer);
  await copyAssets(made, frame.assets);
  const script = await embedScriptFile(
    frame.assets,
    stringsFor(frame.language, frame.notation),
    course.theme?.look,
  );
  await writer.write(script.path, script.content);
  if (folder !== undefined) await copyMedia(media, folder, made);
  for (const { path, make, print } of options.downloads ?? []) {
    const printed = await print?.();
    if (printed !== undefined && writer.keeps(path, printed)) continue;
    await writer.write(path, await make(), printed);
  }
  const [images, noWordIndex] = await Promise.all([drawing, indexing]);
  await writer.finish();
  // Last, since it lists all that was written.
  const kept = frame.offline
    ? await writeWorker(made, await listSite(made, writer), writer.files)
    : { bytes: 0, left: [] };
  return { images, noWordIndex, kept };
}

/** Every file of the new site, also those that the earlier one has for it. */
async function listSite(made: string, { kept }: SiteWriter): Promise<string[]> {
  return [...(await listFiles(made)), ...kept].sort();
}

/** @returns how many pictures the site has, beside its icons. */
async function writePictures(
  course: Course,
  { embeds, print }: RenderedSite,
  writer: SiteWriter,
  { cacheDir, onProgress, onDrawing, icon, parts }: MakeOptions & Pick<SitePlace, 'icon'>,
): Promise<number> {
  const group = print === undefined ? '' : `pictures ${print}`;
  const kept = writer.keepsGroup(group);
  const pictures = kept === undefined ? coursePictures(course, embeds(), parts) : [];
  await writeImages([...pictures, ...courseIcons(course, icon)], writer, {
    cacheDir,
    onDone: (done, all) => onProgress?.({ stage: 'images', done, all }),
    onDrawing,
  });
  if (kept !== undefined) return kept;
  writer.group(
    group,
    pictures.map(({ path }) => path),
  );
  return pictures.length;
}

async function writeGroup({ beginning, make, print }: FileGroup, writer: SiteWriter) {
  const group = print && `${beginning} ${print()}`;
  if (group !== undefined && writer.keepsGroup(group) !== undefined) return;
  const files = make();
  for (const { path, content } of files) await writer.write(path, content);
  if (group === undefined) return;
  writer.group(
    group,
    files.map(({ path }) => path),
  );
}

/** @returns why there is no index for the search by words. */
async function writeWordIndex(
  words: WordIndexes,
  keep: Keep,
  writer: SiteWriter,
): Promise<string | undefined> {
  try {
    for (const part of words.parts()) {
      const group = `${part.name} ${part.print()}`;
      if (writer.keepsGroup(group) !== undefined) continue;
      const files = await part.files(keep);
      for (const { path, content } of files) await writer.write(path, content);
      writer.group(
        group,
        files.map(({ path }) => path),
      );
    }
    return undefined;
  } catch (error) {
    if (error instanceof NoWordIndex) return error.message;
    throw error;
  }
}

/** Renders and writes one page after the other, and forgets it. */
async function writePages(
  { frame, pages }: RenderedSite,
  writer: SiteWriter,
  { onProgress }: Pick<SiteOptions, 'onProgress'>,
): Promise<void> {
  for (const [index, page] of pages.entries()) {
    onProgress?.({ stage: 'pages', done: index, all: pages.length });
    const print = page.print?.();
    if (print !== undefined && writer.keeps(page.path, print)) continue;
    const data = page.data();
    await writer.write(page.path, await renderPage({ page: page.name, frame, data }), print);
  }
}

async function copyMedia(media: ReadonlySet<string>, folder: string, out: string): Promise<void> {
  for (const file of media) await copyPlainFile(folder, file, join(out, file));
}
