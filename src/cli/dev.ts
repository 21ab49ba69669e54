import { previewCourse } from '../check/index.ts';
import type { DeskFinding } from '../contract/index.ts';
import { type CourseOnPages, devServer, openInEditor, writeRoutes } from '../dev/index.ts';
import { makeTemporaryFolder } from '../output/index.ts';
import { courseDownloads, keepMade } from '../pipeline/build/index.ts';
import {
  type CourseSource,
  cacheFolder,
  type LoadedCourse,
  watchCourse,
} from '../pipeline/index.ts';
import { NoCourseError, readSettings } from '../read/index.ts';
import { deskFindings, previewSite, type SitePreview } from '../site/index.ts';
import { stderr, stdout } from './console.ts';
import { courseIn } from './load-course.ts';
import { serve } from './serve.ts';

export interface DevOptions {
  readonly port: number;
  /** A command that opens a file at a line, such as `code -g {file}:{line}:{column}`. */
  readonly editor?: string | undefined;
}

/**
 * `linewright dev`: serves the course and follows its files. A page is made when it is asked for, of the course as it
 * stands: what is wrong is marked on it, and told in the terminal.
 */
export async function dev(
  folder: string,
  { port, editor }: DevOptions,
  source: CourseSource = courseIn(folder),
): Promise<void> {
  let loaded: LoadedCourse | undefined;
  const opens = openInEditor(folder, editor, (file) => loaded?.textOf(file) !== undefined);
  const work = await makeTemporaryFolder();
  let shown: SitePreview | undefined;
  let version = 0;
  /** What authors write into: as `loaded`, once the pages are made of it. */
  let written: CourseOnPages | undefined;
  const server = devServer({
    work: work.path,
    shown: () => shown,
    parts: [
      { name: 'desk', routes: opens?.routes ?? {} },
      { name: 'write', routes: writeRoutes({ folder, shown: () => written }) },
    ],
    hasEditor: opens !== undefined,
  });
  const tell = (findings: readonly DeskFinding[], trouble?: string): void => {
    version++;
    written = trouble === undefined && loaded ? { loaded, version } : undefined;
    server.tell({ version, findings, trouble });
  };

  const show = async (course: LoadedCourse): Promise<void> => {
    loaded = course;
    stdout.printFindings(course);
    const findings = deskFindings(course);
    const trouble = whyUnshown(course);
    if (trouble === undefined) {
      shown = await previewOf(course, folder);
      stdout.print`${new Date().toLocaleTimeString()}  The pages are up to date.\n`;
    } else stdout.print`${trouble}\n`;
    tell(findings, trouble);
  };
  const fail = (error: unknown): void => {
    const said = error instanceof Error ? error.message : String(error);
    const message = error instanceof NoCourseError && shown ? `${said}\n${untilBack}` : said;
    stderr.printLines(`${message}\n`);
    tell([], message);
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
  const changed = (): void => {
    again = true;
    running ??= follow();
  };

  const watching = watchCourse(folder, changed);
  running = follow();
  await running;
  const { server: listening, address } = await serve(server.answer, port);
  stdout.print`The course is at ${address} and follows your files. Stop with Ctrl+C.\n`;

  const stop = (): void => {
    void watching.close();
    listening.close();
    void work.remove().then(() => process.exit(0));
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
  process.once('SIGHUP', stop);
}

/** Title and side bear on every page, and without a chapter there is none. */
function whyUnshown({ course, textOf }: LoadedCourse): string | undefined {
  if (course.chapters.length === 0) return 'The course has no chapters to show.';
  const settings = readSettings({ path: 'course.yaml', text: textOf('course.yaml') ?? '' });
  return settings.isWhole ? undefined : untilMended;
}

function previewOf(loaded: LoadedCourse, folder: string): Promise<SitePreview> {
  const { checked, course, diagnostics } = loaded;
  return previewSite(previewCourse(course, diagnostics), {
    folder,
    cacheDir: cacheFolder(),
    textOf: loaded.textOf,
    // What is handed out is made of a sound course alone.
    downloads: checked
      ? courseDownloads(checked, folder, {
          keep: keepMade(cacheFolder(), folder, loaded.edition()),
        })
      : [],
  });
}

const untilMended =
  'course.yaml does not say, in a way that can be read, which title and side the course has. The pages follow when it does.';
const untilBack = 'The pages stay as they were, and follow the course again when it is back.';
