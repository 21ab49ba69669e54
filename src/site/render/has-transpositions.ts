import type { Course } from '../../model/index.ts';

/** Whether a course has transpositions; for most known without finding `all` of them. */
export function hasTranspositions({ graph }: Course, all: () => readonly unknown[]): boolean {
  const from = new Map<string, string>();
  let perhaps = false;
  for (const { key, moves } of Object.values(graph)) {
    for (const { to } of moves) {
      const other = from.get(to) ?? key;
      from.set(to, other);
      if (other === key) continue;
      // What the course begins with, or a block, may hang on nothing.
      if (graph[to]?.at[0]?.node !== 0) return true;
      perhaps = true;
    }
  }
  return perhaps && all().length > 0;
}
