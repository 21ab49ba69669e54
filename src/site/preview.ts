import { rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import type { PreviewedCourse } from '../check/index.ts';
import { wordFolder } from '../contract/index.ts';
import { makeOnePng } from '../draw/index.ts';
import { copyPlainFile } from '../files/index.ts';
import type { Course } from '../model/index.ts';
import { stringsFor } from '../strings/index.ts';
import { readAssets } from './build/assets.ts';
import { embedScriptFile } from './build/embed-script.ts';
import { courseIcons, coursePictures } from './build/images.ts';
import { readOwnIcon } from './build/own-icon.ts';
import { loadPages, renderPage } from './build/render-page.ts';
import { type IndexFile, NoWordIndex } from './build/word-index.ts';
import { wordIndexes } from './build/word-indexes.ts';
import { markedParts } from './desk/marked-parts.ts';
import { mediaOf, refuseUnfit } from './media-of.ts';
import { once } from './once.ts';
import { embedScript } from './render/embed/embed-elements.ts';
import type { RenderedSite, SitePage } from './render/rendered-site.ts';
import { renderSite } from './render/site.ts';
import type { PageData, SiteDownload, SitePlace } from './site-data.ts';

/** A site whose files are made when asked for, once each. */
export interface SitePreview {
  /** A file as published, but for `assets/` and `media/`; undefined if there is none. */
  find(path: string): Promise<Uint8Array | string | undefined>;
  /**
   * Copies a file of `media/` that the site would have into a folder, unless there is a copy of it as
   * it stands. Returns the path of that in the folder; undefined for any other file.
   * @throws SiteError for what is not to be published.
   */
  copyOfMedia(file: string, to: string): Promise<string | undefined>;
}

export interface PreviewOptions {
  readonly folder: string;
  /** Folder of finished images, kept between builds. */
  readonly cacheDir?: string | undefined;
  readonly downloads?: readonly SiteDownload[] | undefined;
  /** The languages that the course is shown in, as `languagesOf` gives them. */
  readonly languages?: SitePlace['languages'];
  /** The text of a file of the course: what cannot be shown is shown as it is written. */
  readonly textOf?: ((file: string) => string | undefined) | undefined;
  /** As `deskFindings` takes it. */
  readonly fileOf?: ((file: string) => string) | undefined;
}

/** The site of a course with marked findings, for its author. Nothing is kept for reading offline. */
export async function previewSite(
  previewed: PreviewedCourse,
  options: PreviewOptions,
): Promise<SitePreview> {
  const { course } = previewed;
  const downloads = options.downloads ?? [];
  // Prepared beside the course; a page that needs them reports faults.
  loadPages().catch(() => {});
  const place = {
    assets: await readAssets(),
    site: siteOf(course, options),
    languages: options.languages,
    downloads: downloads.map(({ make: _, ...download }) => download),
    offline: false,
    icon: await readOwnIcon(course, options.folder),
  };
  const site = renderSite(
    course,
    place,
    markedParts(previewed, options.textOf ?? (() => undefined), options.fileOf),
  );
  const { frame } = site;
  const pages = shownOnce(site);
  const others: readonly FileMaker[] = [
    ...site.files.map(({ beginning, make }) => makerOf(beginning, once(make))),
    makerOf(
      embedScript,
      once(async () => [
        await embedScriptFile(
          frame.assets,
          stringsFor(frame.language, frame.notation),
          course.theme?.look,
        ),
      ]),
    ),
    ...downloads.map(({ path, make }) =>
      makerOf(
        path,
        once(async () => [{ path, content: await make() }]),
      ),
    ),
    makerOf(
      `${wordFolder}/`,
      once(() => indexAll(site, pages.values(), course.chapters.length)),
    ),
    {
      beginning: 'images/',
      find: pictures(course, site, { cacheDir: options.cacheDir, icon: place.icon }),
    },
  ];
  const media = mediaOf(course);
  const copies = new Map<string, Promise<void>>();
  return {
    async copyOfMedia(file, to) {
      if (!media.has(file)) return undefined;
      await refuseUnfit([file], options.folder);
      const { mtimeMs, size } = await stat(join(options.folder, file));
      const copy = `${mtimeMs}-${size}/${file}`;
      const copying = copies.get(copy) ?? copyAnew(options.folder, file, join(to, copy));
      copies.set(copy, copying);
      await copying;
      return copy;
    },
    async find(path) {
      const page = pages.get(path);
      if (page !== undefined) {
        return renderPage({ page: page.name, frame, data: page.data() });
      }
      for (const { beginning, find } of others) {
        const found = path.startsWith(beginning) ? await find(path) : undefined;
        if (found !== undefined) return found;
      }
      return undefined;
    },
  };
}

/** The address of a course in another language lies below the original's. */
function siteOf({ settings }: Course, { languages = [] }: PreviewOptions): string | undefined {
  const here = languages.find(({ tag }) => tag === settings.language);
  return settings.site && here?.folder ? `${settings.site}/${here.tag}` : settings.site;
}

async function copyAnew(folder: string, file: string, to: string): Promise<void> {
  // An earlier edition of the site may have left it half written.
  await rm(to, { force: true });
  await copyPlainFile(folder, file, to);
}

type Found = Uint8Array | string | undefined;

interface FileMaker {
  readonly beginning: string;
  readonly find: (path: string) => Promise<Found>;
}

interface MadeFile {
  readonly path: string;
  readonly content: Uint8Array | string;
}

function makerOf(
  beginning: string,
  make: () => readonly MadeFile[] | Promise<readonly MadeFile[]>,
): FileMaker {
  return {
    beginning,
    find: async (path) => (await make()).find((file) => file.path === path)?.content,
  };
}

function shownOnce({ pages }: RenderedSite): ReadonlyMap<string, SitePage> {
  return new Map(
    pages.map((page) => {
      const data: () => PageData[SitePage['name']] = once(page.data);
      return [page.path, { ...page, data }];
    }),
  );
}

async function indexAll(
  { frame }: RenderedSite,
  pages: Iterable<SitePage>,
  chapters: number,
): Promise<IndexFile[]> {
  const words = wordIndexes(frame.language, chapters);
  for (const { name, data } of pages) {
    if (name !== 'chapter' && name !== 'own') continue;
    const shown = data();
    const document = 'chapter' in shown ? shown.chapter : 'own' in shown ? shown.own : undefined;
    if (document === undefined) continue;
    words.add({ id: document.id, page: () => document, print: () => '' });
    // Requests that come meanwhile get the same.
    await setImmediate();
  }
  const files: IndexFile[] = [];
  try {
    for (const part of words.parts()) {
      files.push(...(await part.files((_kind, _inputs, make) => make())));
    }
  } catch (error) {
    // The page says that the words cannot be searched.
    if (!(error instanceof NoWordIndex)) throw error;
  }
  return files;
}

function pictures(
  course: Course,
  site: RenderedSite,
  { cacheDir, icon }: Pick<PreviewOptions, 'cacheDir'> & { readonly icon: string | undefined },
) {
  const all = once(
    () =>
      new Map(
        [...coursePictures(course, site.embeds()), ...courseIcons(course, icon)].map(
          ({ path, job }) => [path, job],
        ),
      ),
  );
  return async (path: string): Promise<Found> => {
    const job = all().get(path);
    return job && makeOnePng(job(), cacheDir);
  };
}
