import fc from 'fast-check';
import { randomFrom } from '../chess/random.ts';

/** Choices of a case. The same seed and number give the same ones, on any machine. */
export interface Random {
  /** From 0 up to, and without, `below`. */
  readonly below: (below: number) => number;
  readonly chance: (probability: number) => boolean;
  readonly pick: <T>(list: readonly T[]) => T;
  readonly sample: <T>(arbitrary: fc.Arbitrary<T>) => T;
}

export function makeRandom(seed: number, number: number): Random {
  const next = randomFrom(Math.imul(seed, 0x9e3779b1) ^ Math.imul(number + 1, 0x85ebca6b));
  const below = (limit: number) => Math.floor(next() * limit);
  return {
    below,
    chance: (probability) => next() < probability,
    pick(list) {
      const chosen = list[below(list.length)];
      if (chosen === undefined) throw new RangeError('nothing to pick from');
      return chosen;
    },
    sample(arbitrary) {
      const [value] = fc.sample(arbitrary, { seed: below(0x7fffffff), numRuns: 1 });
      // `sample` of one run gives one value.
      return value as typeof value & {};
    },
  };
}
