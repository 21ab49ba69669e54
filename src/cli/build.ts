import path from 'node:path';
import { prepareOutput } from '../output/index.ts';
import { isShelf } from '../read/index.ts';
import { type BuildOptions, defaultOutput } from './build-options.ts';
import { count, exitCodes, stderr, stdout } from './console.ts';
import { loadLazilyToPublish } from './load-course.ts';
import { printCarried } from './print-carried.ts';
import { createProgressLine } from './progress-line.ts';
import { keepRoom, spareMemory } from './spare-memory.ts';
import { tellLack, tellWeight } from './tell-built.ts';

/** `linewright build`: checks the course and publishes its site if there is no error. */
export async function build(folder: string, options: BuildOptions): Promise<number> {
  if (await isShelf(folder)) {
    const { publishShelf } = await import('./shelf/build-shelf.ts');
    return publishShelf(folder, options);
  }
  const start = performance.now();
  const out = options.out ?? defaultOutput(folder);
  // First: cleans up after a killed build, even if this course has errors.
  await prepareOutput(out, folder, options.out === undefined);
  // Loads while the files are read.
  const building = import('../pipeline/build/index.ts');
  const loaded = await loadLazilyToPublish(folder);
  stderr.printFindings(loaded);
  if (!loaded.checked) {
    stderr.print`Nothing was published; an earlier site stands as it was.\n`;
    return exitCodes.findings;
  }
  const { buildCourse } = await building;
  const progress = createProgressLine(stderr);
  const { length } = loaded.course.chapters;
  const summary = await buildCourse(
    { ...loaded, checked: loaded.checked },
    {
      folder,
      out,
      base: options.base,
      site: options.site,
      onProgress({ stage, done, all }) {
        keepRoom(length);
        progress.show(stage, done, all);
      },
      onDrawing: () => spareMemory(length, 'besideDrawing'),
    },
  ).finally(progress.clear);
  tellLack(summary);
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  const chapters = count(length, 'chapter');
  const pages = count(summary.pages, 'page');
  const pictures = count(summary.images, 'picture');
  stdout.print`${chapters}, ${pages}, ${pictures} in ${seconds} s: ${out}\n`;
  printCarried(out, summary.carried);
  const boards = 'boards/list.html';
  if (summary.files.includes(boards)) {
    stdout.print`Boards for other sites: ${path.join(out, boards)}\n`;
  }
  tellWeight(summary);
  return exitCodes.clean;
}
