import { rmSync } from 'node:fs';
import path from 'node:path';
import { courseOf, editChapter } from '../courses.ts';
import { cli, measure, root } from '../measure.ts';
import { heading, row } from '../report.ts';

/** `check` with nothing kept, against a bare parse and replay; and again after an edit. */
export async function benchCheck(work: string): Promise<void> {
  heading('check');
  for (const chapters of [200, 1000]) {
    const course = await courseOf(chapters, work);
    const runs = chapters > 500 ? 1 : 3;
    const cache = path.join(work, 'cache-check');
    const forget = () => rmSync(cache, { recursive: true, force: true });
    const script = path.join(root, 'tests/bench/alone/bare-check.ts');
    const bare = measure([script, course.folder, course.lines], { work, runs });
    row(`${chapters} chapters: bare remark-parse and the core's replay`, bare);
    const args = [cli, 'check', course.folder];
    const first = measure(args, { work, cache, runs, prepare: forget });
    row(`${chapters} chapters: check, nothing kept`, first, [
      { value: first.processor / bare.processor, unit: '× the bare parse', goal: 1.6 },
    ]);
    const again = measure(args, {
      work,
      cache,
      runs,
      prepare: () => editChapter(course, chapters),
    });
    const goal = chapters === 1000 ? { goal: 0.12 } : {};
    row(`${chapters} chapters: check again after one edit`, again, [
      { value: again.processor / first.processor, unit: '× its first run', ...goal },
    ]);
  }
}
