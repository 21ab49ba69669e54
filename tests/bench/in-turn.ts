import { type Cost, medianBy } from './measure.ts';
import type { Figure } from './report.ts';

/**
 * Measures scenarios one after the other, so many times over. The speed of a machine drifts by a fifth within
 * minutes: runs that are compared are those of one round, which lie next to each other.
 */
export function inTurn<Name extends string>(
  rounds: number,
  scenarios: Readonly<Record<Name, () => Cost>>,
): Readonly<Record<Name, readonly Cost[]>> {
  const names = Object.keys(scenarios) as Name[];
  const costs = Object.fromEntries(names.map((name) => [name, [] as Cost[]])) as unknown as Record<
    Name,
    Cost[]
  >;
  for (let round = 0; round < rounds; round += 1) {
    for (const name of names) costs[name].push(scenarios[name]());
  }
  return costs;
}

/** The run that stands for all of a scenario: the median by processor time. */
export function typical(costs: readonly Cost[]): Cost {
  return medianBy(costs, ({ processor }) => processor);
}

/** How many times what the base of its round took a scenario takes: the median of the rounds, and their spread. */
export function ratio(
  subject: readonly Cost[],
  base: readonly Cost[],
  of: (cost: Cost) => number = ({ processor }) => processor,
): Pick<Figure, 'value' | 'spread'> {
  if (subject.length !== base.length) throw new Error('a round lacks a run');
  const ratios = subject.map((cost, round) => of(cost) / of(base[round] as Cost));
  return {
    value: medianBy(ratios, (each) => each),
    spread: { least: Math.min(...ratios), most: Math.max(...ratios), pairs: ratios.length },
  };
}
