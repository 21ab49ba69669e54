import type { EngineFact } from './types.ts';

/** Facts of positions, to be asked while a course is checked. */
export interface EngineFacts {
  readonly size: number;
  /** The deepest result for a position by its key; of two as deep the first by the engine's name. */
  readonly at: (key: string) => EngineFact | undefined;
}

export const noFacts: EngineFacts = { size: 0, at: () => undefined };

export function makeEngineFacts(facts: Iterable<EngineFact>): EngineFacts {
  const deepest = new Map<string, EngineFact>();
  for (const fact of facts) {
    const known = deepest.get(fact.key);
    if (known === undefined || comesFirst(fact, known)) deepest.set(fact.key, fact);
  }
  return { size: deepest.size, at: (key) => deepest.get(key) };
}

function comesFirst(a: EngineFact, b: EngineFact): boolean {
  if (a.depth !== b.depth) return a.depth > b.depth;
  return [a.engine, a.settings].join('\t') < [b.engine, b.settings].join('\t');
}
