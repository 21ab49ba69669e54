import path from 'node:path';
import { courseOf } from '../courses.ts';
import { measure, median, root } from '../measure.ts';
import { heading, row } from '../report.ts';

/** What an editor waits for: answers of the language server, and findings of what was typed. */
export async function benchLsp(work: string): Promise<void> {
  const demo = path.join(root, 'demo-course');
  for (const [name, folder, goal] of [
    ['the demo', demo, 50],
    ['200 chapters', (await courseOf(200, work)).folder, 150],
  ] as const) {
    heading(`answers of the language server, ${name} (median of 15)`);
    const script = path.join(root, 'tests/bench/alone/language-server.ts');
    const { output } = measure([script, folder], { work });
    const taken = JSON.parse(output) as Record<string, { processor: number; wall: number }[]>;
    for (const [question, all] of Object.entries(taken)) {
      const processor = median(all.map((one) => one.processor));
      row(question, { processor, wall: median(all.map((one) => one.wall)) }, [
        // Findings are no answer: nobody waits for them.
        {
          value: processor * 1000,
          unit: 'ms',
          ...(question.startsWith('findings') ? {} : { goal }),
        },
      ]);
    }
  }
}
