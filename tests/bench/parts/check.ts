import { rmSync } from 'node:fs';
import path from 'node:path';
import { courseOf, editChapter } from '../courses.ts';
import { inTurn, ratio, typical } from '../in-turn.ts';
import { cli, measure, root } from '../measure.ts';
import { heading, row } from '../report.ts';

/** `check` with nothing kept, against a bare parse and replay; and again after an edit. */
export async function benchCheck(work: string): Promise<void> {
  heading('check');
  const script = path.join(root, 'tests/bench/alone/bare-check.ts');
  const cache = path.join(work, 'cache-check');
  for (const [chapters, rounds] of [
    [200, 5],
    [1000, 3],
  ] as const) {
    const course = await courseOf(chapters, work);
    const args = [cli, 'check', course.folder];
    const forget = () => rmSync(cache, { recursive: true, force: true });
    const edit = () => editChapter(course, chapters);
    const { bare, first, again } = inTurn(rounds, {
      bare: () => measure([script, course.folder, course.lines], { work }),
      first: () => measure(args, { work, cache, prepare: forget }),
      again: () => measure(args, { work, cache, prepare: edit }),
    });
    row(`${chapters} chapters: bare remark-parse and the core's replay`, typical(bare));
    row(`${chapters} chapters: check, nothing kept`, typical(first), [
      { ...ratio(first, bare), unit: '× the bare parse', goal: 1.6 },
    ]);
    const goal = chapters === 1000 ? { goal: 0.12 } : {};
    row(`${chapters} chapters: check again after one edit`, typical(again), [
      { ...ratio(again, first), unit: '× its first run', ...goal },
    ]);
  }
}
