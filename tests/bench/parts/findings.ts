import path from 'node:path';
import { courseOf } from '../courses.ts';
import { measure, median, root } from '../measure.ts';
import { heading, row } from '../report.ts';

/** All findings after an edit, in a process that keeps running; at the 500th edit too. */
export async function benchFindings(work: string): Promise<void> {
  heading('findings after one edit inside a running process (milliseconds of the processor)');
  for (const chapters of [200, 1000]) {
    const { folder } = await courseOf(chapters, work);
    const script = path.join(root, 'tests/bench/alone/edits.ts');
    const { output, megabytes } = measure(['--expose-gc', script, folder], { work });
    const { costs, memory } = JSON.parse(output) as { costs: number[]; memory: number[] };
    for (const [name, some, heap] of [
      ['the first 20 edits', costs.slice(0, 20), memory[0]],
      ['edits 481 to 500', costs.slice(-20), memory[1]],
    ] as const) {
      const processor = median(some);
      const goal = chapters === 200 ? { goal: 80 } : {};
      row(`${chapters} chapters: ${name}, median`, { processor, megabytes }, [
        { value: processor * 1000, unit: 'ms', ...goal },
        { value: heap ?? 0, unit: 'MB of heap' },
      ]);
    }
  }
}
