import { readdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { type BenchCourse, courseOf, editChapter, editMove } from '../courses.ts';
import { inTurn, ratio, typical } from '../in-turn.ts';
import { type Cost, cli, measure } from '../measure.ts';
import { plainAstro } from '../plain-astro.ts';
import { type Figure, heading, row } from '../report.ts';

/** `build` with nothing kept, with its pictures kept and after an edit, against plain Astro. */
export async function benchBuild(work: string): Promise<void> {
  heading('build');
  for (const [chapters, rounds, most] of [
    [200, 3, 1.5],
    [1000, 3, 1.8],
  ] as const) {
    const name = (what: string) => `${chapters} chapters: ${what}`;
    const { plain, fresh, kept, unchanged, words, move } = buildInTurn(
      await courseOf(chapters, work),
      { work, chapters, rounds },
    );
    const times = (costs: readonly Cost[]) => ({ ...ratio(costs, plain), unit: '× plain Astro' });
    row(name('plain Astro, blocks as code'), typical(plain));
    row(name('build, nothing kept'), typical(fresh), [
      ...(chapters === 1000 ? absolute(typical(fresh)) : []),
      times(fresh),
    ]);
    row(name('build, pictures kept'), typical(kept), [{ ...times(kept), goal: most }]);
    row(name('build again, nothing changed'), typical(unchanged), [times(unchanged)]);
    const goal = chapters === 1000 ? { goal: 0.5 } : {};
    row(name('build again after one edit of words'), typical(words), [
      { ...times(words), ...goal },
    ]);
    row(name('build again after one edit of a move'), typical(move), [{ ...times(move), ...goal }]);
  }
}

function buildInTurn(
  course: BenchCourse,
  { work, chapters, rounds }: { work: string; chapters: number; rounds: number },
) {
  const out = path.join(work, `site-${chapters}`);
  const cache = path.join(work, `cache-build-${chapters}`);
  const args = [cli, 'build', course.folder, '--out', out];
  const withoutSite = () => rmSync(out, { recursive: true, force: true });
  const forget = () => {
    withoutSite();
    rmSync(cache, { recursive: true, force: true });
  };
  const keepPictures = () => {
    withoutSite();
    for (const name of readdirSync(cache)) {
      if (!name.endsWith('.png')) rmSync(path.join(cache, name), { recursive: true });
    }
  };
  const build = (prepare: () => void) => () => measure(args, { work, cache, prepare });
  const costs = inTurn(rounds, {
    plain: plainAstro(course.folder, work),
    fresh: build(forget),
    kept: build(keepPictures),
    unchanged: build(withoutSite),
    words: build(() => editChapter(course, chapters)),
    move: build(() => editMove(course, chapters)),
  });
  withoutSite();
  return costs;
}

function absolute({ processor, megabytes, whole }: Cost): Figure[] {
  const figures = [
    { value: processor, unit: 's', goal: 45 },
    { value: megabytes, unit: 'MB', goal: 700 },
  ];
  if (whole === undefined) return figures;
  return [...figures, { value: whole, unit: 's with drawing and indexing' }];
}
