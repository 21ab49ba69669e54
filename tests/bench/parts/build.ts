import { readdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { courseOf, editChapter } from '../courses.ts';
import { cli, measure } from '../measure.ts';
import { plainAstro } from '../plain-astro.ts';
import { heading, row } from '../report.ts';

/** `build` with nothing kept, with its pictures kept and after one edit, against plain Astro. */
export async function benchBuild(work: string): Promise<void> {
  heading('build');
  for (const [chapters, most] of [
    [200, 1.5],
    [1000, 1.8],
  ] as const) {
    const course = await courseOf(chapters, work);
    const runs = chapters > 500 ? 1 : 3;
    const plain = plainAstro(course.folder, work, runs);
    row(`${chapters} chapters: plain Astro, blocks as code`, plain);
    const times = (processor: number) => ({
      value: processor / plain.processor,
      unit: '× plain Astro',
    });
    const out = path.join(work, `site-${chapters}`);
    const cache = path.join(work, `cache-build-${chapters}`);
    const args = [cli, 'build', course.folder, '--out', out];
    const withoutSite = () => rmSync(out, { recursive: true, force: true });
    const fresh = measure(args, { work, cache });
    row(`${chapters} chapters: build, nothing kept`, fresh, [
      ...(chapters === 1000
        ? [
            { value: fresh.processor, unit: 's', goal: 45 },
            { value: fresh.megabytes, unit: 'MB', goal: 700 },
          ]
        : []),
      ...(fresh.whole === undefined
        ? []
        : [{ value: fresh.whole, unit: 's with drawing and indexing' }]),
    ]);
    const keepPictures = () => {
      withoutSite();
      for (const name of readdirSync(cache)) {
        if (!name.endsWith('.png')) rmSync(path.join(cache, name), { recursive: true });
      }
    };
    const kept = measure(args, { work, cache, runs, prepare: keepPictures });
    const figure = { ...times(kept.processor), goal: most };
    row(`${chapters} chapters: build, pictures kept`, kept, [figure]);
    const unchanged = measure(args, { work, cache, runs, prepare: withoutSite });
    row(`${chapters} chapters: build again, nothing changed`, unchanged, [
      times(unchanged.processor),
    ]);
    const edit = () => editChapter(course, chapters);
    const again = measure(args, { work, cache, runs, prepare: edit });
    const goal = chapters === 1000 ? { goal: 0.5 } : {};
    row(`${chapters} chapters: build again after one edit`, again, [
      { ...times(again.processor), ...goal },
    ]);
    withoutSite();
  }
}
