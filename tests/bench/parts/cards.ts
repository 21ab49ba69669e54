import path from 'node:path';
import { measure, root } from '../measure.ts';
import { heading, row } from '../report.ts';

/** A social card, when what all cards share has been made. */
export async function benchCards(work: string): Promise<void> {
  heading('social cards');
  const cost = measure([path.join(root, 'tests/bench/alone/cards.ts')], { work });
  const { seconds } = JSON.parse(cost.output) as { seconds: number };
  row('110 cards, and the start of the process', cost, [
    { value: seconds * 1000, unit: 'ms a card', goal: 30 },
  ]);
}
