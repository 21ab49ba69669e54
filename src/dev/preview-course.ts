import path from 'node:path';
import { previewCourse } from '../check/index.ts';
import { documentsOf } from '../model/index.ts';
import { makeTemporaryFolder } from '../output/index.ts';
import { courseDownloads, keepMade } from '../pipeline/build/index.ts';
import {
  type CourseSource,
  cacheFolder,
  type LoadedCourse,
  watchCourse,
} from '../pipeline/index.ts';
import { NoCourseError, readSettings } from '../read/index.ts';
import { deskFindings, languagesOf, previewSite, type SitePreview } from '../site/index.ts';
import { type DevServer, devServer } from './dev-server.ts';
import { openInEditor } from './open-in-editor.ts';
import { namesOfTranslation, openTranslations } from './translations.ts';
import { type CourseOnPages, writeRoutes } from './write/index.ts';

/** Where it is told how the course stands. */
export interface PreviewReport {
  /** The course was read; it may have findings. */
  readonly read: (loaded: LoadedCourse) => void;
  readonly shown: (loaded: LoadedCourse) => void;
  /** The pages stay as they were, and why. */
  readonly unshown: (why: string) => void;
  /** It could not be read or shown at all. */
  readonly failed: (message: string) => void;
}

export interface CoursePreviewOptions {
  readonly folder: string;
  readonly source: CourseSource;
  /** The path that the pages are served at; requests come without it. `/` unless said. */
  readonly root?: string | undefined;
  /** A command that opens a file at a line, such as `code -g {file}:{line}:{column}`. */
  readonly editor?: string | undefined;
  readonly report: PreviewReport;
  /** Of a translation: its language, and that of its original. */
  readonly translated?: { readonly tag: string; readonly from: string } | undefined;
}

export interface CoursePreview extends Pick<DevServer, 'answer' | 'page'> {
  /** The course as the pages show it, or as it was read last. */
  readonly loaded: () => LoadedCourse | undefined;
  close(): Promise<void>;
}

/**
 * The preview of a course, which follows its files. A page is made when it is asked for, of the course as it stands:
 * what is wrong is marked on it. Below the tag of a language stands the preview of the translation. Settles when the
 * course was read for the first time.
 */
export async function openPreview(options: CoursePreviewOptions): Promise<CoursePreview> {
  const { folder, root, editor, source, report, translated } = options;
  let loaded: LoadedCourse | undefined;
  const names = translated && namesOfTranslation(translated.tag);
  const fileOf = names?.fileOf ?? ((file: string) => file);
  const opens = openInEditor(folder, editor, (file) =>
    loaded?.textOf(fileOf(file)) === undefined ? undefined : fileOf(file),
  );
  const work = await makeTemporaryFolder();
  let shown: SitePreview | undefined;
  let version = 0;
  /** What authors write into: as `loaded`, once the pages are made of it. */
  let written: CourseOnPages | undefined;
  const server = devServer({
    root,
    work: work.path,
    shown: () => shown,
    parts: [
      { name: 'desk', routes: opens?.routes ?? {} },
      // Moves are the original's: a translator writes words, in his editor.
      ...(names ? [] : [{ name: 'write', routes: writeRoutes({ folder, shown: () => written }) }]),
    ],
    hasEditor: opens !== undefined,
  });
  const tell = (course: LoadedCourse | undefined, trouble?: string): void => {
    version++;
    written = trouble === undefined && course ? { loaded: course, version } : undefined;
    server.tell({ version, findings: course ? deskFindings(course, fileOf) : [], trouble });
  };

  const show = async (read: LoadedCourse): Promise<void> => {
    report.read(read);
    const course = names?.asOriginal(read) ?? read;
    loaded = course;
    const trouble = whyUnshown(course);
    if (trouble === undefined) {
      shown = await previewOf(course, options, fileOf);
      report.shown(course);
    } else report.unshown(trouble);
    tell(course, trouble);
  };
  const fail = (error: unknown): void => {
    const said = error instanceof Error ? error.message : String(error);
    const message = error instanceof NoCourseError && shown ? `${said}\n${untilBack}` : said;
    report.failed(message);
    tell(undefined, message);
  };

  const hasNewError = (now: LoadedCourse): boolean => {
    const known = new Set(loaded && deskFindings(loaded).map(({ id }) => id));
    return deskFindings(now).some(({ id, severity }) => severity === 'error' && !known.has(id));
  };

  // One reading at a time; changes meanwhile cause one more.
  let running: Promise<void> | undefined;
  let again = false;
  const follow = async (): Promise<void> => {
    do {
      again = false;
      const now = await source.current().catch((error: unknown) => ({ error }));
      // What is being written looks like an error: a fault that was not there is shown when the files have settled.
      if (!('course' in now) || hasNewError(now)) await watching.settled();
      if (again) continue;
      if ('error' in now) fail(now.error);
      else await show(now).catch(fail);
    } while (again);
    running = undefined;
  };
  const watching = watchCourse(folder, () => {
    again = true;
    running ??= follow();
  });
  running = follow();
  await running;
  const translations = openTranslations(options, () => loaded, openPreview);
  return {
    answer(request, response) {
      translations.answer(request, response, () => server.answer(request, response));
    },
    page: server.page,
    loaded: () => loaded,
    async close() {
      await Promise.all([watching.close(), work.remove(), translations.close()]);
    },
  };
}

/** Title and side bear on every page, and without a chapter there is none. */
function whyUnshown({ course, textOf }: LoadedCourse): string | undefined {
  if (course.chapters.length === 0) return 'The course has no chapters to show.';
  const settings = readSettings({ path: 'course.yaml', text: textOf('course.yaml') ?? '' });
  return settings.isWhole ? undefined : untilMended;
}

function previewOf(
  loaded: LoadedCourse,
  { folder, translated }: CoursePreviewOptions,
  fileOf: (file: string) => string,
): Promise<SitePreview> {
  const { checked, course, diagnostics, translations } = loaded;
  const kept = translated ? path.join(folder, 'translations', translated.tag) : folder;
  const others = translations.map(({ tag, chapters }) => ({
    tag,
    lacks: documentsOf(course).filter(({ file }) => !chapters.has(file)),
  }));
  return previewSite(previewCourse(course, diagnostics), {
    folder,
    cacheDir: cacheFolder(),
    languages: languagesOf(translated?.from ?? course.settings.language, others),
    textOf: loaded.textOf,
    fileOf,
    // What is handed out is made of a sound course alone.
    downloads: checked
      ? courseDownloads(checked, folder, {
          keep: keepMade(cacheFolder(), kept, loaded.edition()),
        })
      : [],
  });
}

const untilMended =
  'course.yaml does not say, in a way that can be read, which title and side the course has. The pages follow when it does.';
const untilBack = 'The pages stay as they were, and follow the course again when it is back.';
