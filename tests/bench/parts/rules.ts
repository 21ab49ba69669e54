import path from 'node:path';
import { measure, root } from '../measure.ts';
import { heading, row } from '../report.ts';

/** The time of each rule on 10,000 moves of one side's repertoire, the costliest first. */
export async function benchRules(work: string): Promise<void> {
  heading('each rule on 10,000 moves (milliseconds)');
  const script = path.join(root, 'tests/bench/alone/rules.ts');
  const { output, megabytes } = measure([script], { work });
  const costs = Object.entries(JSON.parse(output) as Record<string, number>);
  for (const [rule, milliseconds] of costs.sort((one, other) => other[1] - one[1])) {
    row(rule, { processor: milliseconds / 1000, megabytes }, [{ value: milliseconds, unit: 'ms' }]);
  }
}
