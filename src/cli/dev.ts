import { printableLines, reportText } from '../diagnostics/index.ts';
import { makeTemporaryFolder } from '../output/index.ts';
import { NoCourseError } from '../read/index.ts';
import type { SitePreview } from '../site/index.ts';
import { cacheFolder } from './cache-folder.ts';
import { stderr, stdout } from './console.ts';
import { type CourseSource, courseIn } from './course-source.ts';
import { devServer } from './dev-server.ts';
import { courseDownloads } from './downloads.ts';
import { keepMade } from './keep-made.ts';
import type { LoadedCourse } from './load-course.ts';
import { serve } from './serve.ts';
import { watchCourse } from './watch-course.ts';

/**
 * `linewright dev`: serves the course and follows its files. A page is made when it is asked for. The
 * findings stand in the terminal and on the page; while there is an error the last good pages stay.
 */
export async function dev(
  folder: string,
  { port }: { port: number },
  source: CourseSource = courseIn(folder),
): Promise<void> {
  const { previewSite } = await import('../site/index.ts');
  const work = await makeTemporaryFolder();
  let shown: SitePreview | undefined;
  let version = 0;
  const server = devServer(work.path, () => shown);
  const tell = (findings: string): void => {
    version++;
    server.tell({ version, findings });
  };

  const show = async (loaded: LoadedCourse): Promise<void> => {
    stdout.printFindings(loaded);
    const { checked, diagnostics, textOf } = loaded;
    if (checked) {
      shown = await previewSite(checked, {
        folder,
        cacheDir: cacheFolder(),
        downloads: courseDownloads(checked, folder, {
          keep: keepMade(cacheFolder(), folder, loaded.edition()),
        }),
      });
      stdout.print`${new Date().toLocaleTimeString()}  The pages are up to date.\n`;
    } else {
      stdout.print`The pages stay as they were until the errors are mended.\n`;
    }
    tell(diagnostics.length === 0 ? '' : reportText(diagnostics, { textOf, color: false }));
  };
  const fail = (error: unknown): void => {
    const said = error instanceof Error ? error.message : String(error);
    const message = error instanceof NoCourseError && shown ? `${said}\n${untilBack}` : said;
    stderr.printLines(`${message}\n`);
    tell(printableLines(message));
  };

  // One reading at a time; changes meanwhile cause one more.
  let running: Promise<void> | undefined;
  let again = false;
  const follow = async (): Promise<void> => {
    do {
      again = false;
      const loaded = await source.current().catch((error: unknown) => ({ error }));
      // What is being written looks like an error: a sound course is shown at once, a fault when the
      // files have settled.
      if (!('checked' in loaded)) await watching.settled();
      if (again) continue;
      if ('error' in loaded) fail(loaded.error);
      else await show(loaded).catch(fail);
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

const untilBack = 'The pages stay as they were, and follow the course again when it is back.';
