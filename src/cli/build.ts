import path from 'node:path';
import { prepareOutput } from '../output/index.ts';
import { count, exitCodes, stderr, stdout } from './console.ts';
import { loadLazilyToPublish } from './load-course.ts';
import { printCarried } from './print-carried.ts';
import { createProgressLine } from './progress-line.ts';

export interface BuildOptions {
  readonly out?: string;
  readonly base?: string;
  readonly site?: string;
}

/** More than a phone should load without being asked (a judgement, no source). */
const heavy = 50_000_000;

/** Where a course is published to unless `--out` says otherwise. */
export function defaultOutput(folder: string): string {
  return path.join(folder, 'site');
}

/** `linewright build`: checks the course and, if it has no error, publishes its site. */
export async function build(folder: string, options: BuildOptions): Promise<number> {
  const start = performance.now();
  const out = options.out ?? defaultOutput(folder);
  // First of all: what an earlier build that was killed left is mended even if the course has errors.
  await prepareOutput(out, folder, options.out === undefined);
  // It loads while files are waited for.
  const building = import('../pipeline/build/index.ts');
  const loaded = await loadLazilyToPublish(folder);
  stderr.printFindings(loaded);
  if (!loaded.checked) {
    stderr.print`Nothing was published; an earlier site stands as it was.\n`;
    return exitCodes.findings;
  }
  const { buildCourse } = await building;
  const progress = createProgressLine(stderr);
  const summary = await buildCourse(
    { ...loaded, checked: loaded.checked },
    {
      folder,
      out,
      base: options.base,
      site: options.site,
      onProgress: ({ stage, done, all }) => progress.show(stage, done, all),
    },
  ).finally(progress.clear);
  if (summary.noWordIndex !== undefined) {
    stderr.print`The site has no search by words, since its indexer cannot run here (${summary.noWordIndex}).\n`;
    stderr.print`Install Linewright again without leaving out optional packages; all other pages are whole.\n`;
  }
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  const chapters = count(loaded.course.chapters.length, 'chapter');
  const pages = count(summary.pages, 'page');
  const pictures = count(summary.images, 'picture');
  stdout.print`${chapters}, ${pages}, ${pictures} in ${seconds} s: ${out}\n`;
  printCarried(out, summary.carried);
  const boards = 'boards/list.html';
  if (summary.files.includes(boards)) {
    stdout.print`Boards for other sites: ${path.join(out, boards)}\n`;
  }
  const { left, bytes } = summary.kept;
  if (left.length > 0) {
    stdout.print`Too large to be kept for reading offline: ${left.join(', ')}\n`;
  }
  if (bytes > heavy) {
    const size = Math.round(bytes / 1_000_000);
    stdout.print`A reader's browser keeps ${size} MB for reading offline: smaller pictures in media/ would help.\n`;
  }
  return exitCodes.clean;
}
