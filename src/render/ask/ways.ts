import { type Course, type NodeRef, outlinedBlockAt } from '../../model/index.ts';

const known = new WeakMap<Course, Map<string, ReadonlyMap<string, NodeRef>>>();

/**
 * For each position that leads to a position, the first occurrence of that step. Cached for positions that occur more
 * than once.
 */
export function waysTo(course: Course, key: string): ReadonlyMap<string, NodeRef> {
  const at = course.graph[key]?.at ?? [];
  if (at.length < 2) return findWays(course, at);
  const byKey = known.get(course) ?? new Map<string, ReadonlyMap<string, NodeRef>>();
  known.set(course, byKey);
  const found = byKey.get(key) ?? findWays(course, at);
  byKey.set(key, found);
  return found;
}

function findWays(course: Course, at: readonly NodeRef[]): ReadonlyMap<string, NodeRef> {
  const ways = new Map<string, NodeRef>();
  for (const ref of at) {
    const nodes = outlinedBlockAt(course, ref)?.nodes;
    const way = nodes?.[nodes[ref.node]?.parent ?? -1]?.key;
    if (way !== undefined && !ways.has(way)) ways.set(way, ref);
  }
  return ways;
}
