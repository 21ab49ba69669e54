import { prepareOutput } from '../../output/index.ts';
import { buildShelf, openShelf, textsOf } from '../../pipeline/shelf/index.ts';
import { type BuildOptions, defaultOutput } from '../build-options.ts';
import { count, exitCodes, stderr, stdout } from '../console.ts';
import { printCarried } from '../print-carried.ts';
import { createProgressLine } from '../progress-line.ts';
import { tellLack, tellWeight } from '../tell-built.ts';

/** `linewright build` of a shelf: builds each course as it would alone and publishes all as one site. */
export async function publishShelf(folder: string, options: BuildOptions): Promise<number> {
  const start = performance.now();
  const out = options.out ?? defaultOutput(folder);
  const shelf = await openShelf(folder);
  const { courses } = shelf.files;
  const real = await prepareOutput(
    out,
    folder,
    options.out === undefined,
    courses.map((course) => course.path),
  );
  const progress = createProgressLine(stderr);
  const { findings, chapters, published } = await buildShelf(shelf, {
    out: real,
    base: options.base,
    site: options.site,
    progress,
    onProgress: ({ stage, done, all }) => progress.show(stage, done, all),
  }).finally(progress.clear);
  const { all: diagnostics } = findings;
  stderr.printFindings({ diagnostics, textOf: await textsOf(folder, diagnostics) });
  if (!published) {
    stderr.print`Nothing was published; an earlier site stands as it was.\n`;
    return exitCodes.findings;
  }
  const { own } = published;
  const summaries = published.courses.map(({ build }) => build);
  const sum = (of: 'pages' | 'images') => summaries.reduce((all, each) => all + each[of], 0);
  const lack = summaries.find(({ noWordIndex }) => noWordIndex !== undefined);
  if (lack) tellLack(lack);
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  const size = [
    count(courses.length, 'course'),
    count(chapters, 'chapter'),
    count(sum('pages') + own.filter((file) => file.endsWith('.html')).length, 'page'),
    count(sum('images'), 'picture'),
  ];
  stdout.print`${size.join(', ')} in ${seconds} s: ${out}\n`;
  printCarried(out, published.carried);
  const kept = summaries.map((summary) => summary.kept);
  tellWeight({
    kept: {
      left: published.courses.flatMap(({ id, build }) =>
        build.kept.left.map((file) => `${id}/${file}`),
      ),
      // A browser keeps each course by itself.
      bytes: Math.max(...kept.map(({ bytes }) => bytes)),
    },
  });
  return exitCodes.clean;
}
