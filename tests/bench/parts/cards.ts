import path from 'node:path';
import { inTurn, ratio, typical } from '../in-turn.ts';
import { type Cost, measure, root } from '../measure.ts';
import { heading, row } from '../report.ts';
import { yardstick, yardstickUnit } from '../yardstick.ts';

/** A social card, when what all cards share has been made. */
export async function benchCards(work: string): Promise<void> {
  heading('social cards');
  const script = path.join(root, 'tests/bench/alone/cards.ts');
  const { bare, cards } = inTurn(3, {
    bare: () => yardstick(work),
    cards: () => measure([script], { work }),
  });
  row('110 cards, and the start of the process', typical(cards), [
    { value: secondsOf(typical(cards)) * 1000, unit: 'ms a card', goal: 30 },
    { ...ratio(cards, bare), unit: yardstickUnit },
  ]);
}

function secondsOf({ output }: Cost): number {
  return (JSON.parse(output) as { seconds: number }).seconds;
}
