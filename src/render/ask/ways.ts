import { type Course, type NodeRef, outlinedBlockAt } from '../../model/index.ts';

const known = new WeakMap<Course, Map<string, ReadonlyMap<string, NodeRef>>>();

/**
 * The first occurrence of each step to a position from another one than `known`. Most positions occur once and have none.
 */
export function otherWaysTo(course: Course, key: string, known: string | null): NodeRef[] {
  const [first, second] = course.graph[key]?.at ?? [];
  if (first === undefined) return [];
  if (second === undefined) {
    const way = wayAt(course, first);
    return way === undefined || way === known ? [] : [first];
  }
  const places: NodeRef[] = [];
  for (const [way, ref] of waysTo(course, key)) if (way !== known) places.push(ref);
  return places;
}

/** The key of the position before an occurrence, in the same block. */
function wayAt(course: Course, ref: NodeRef): string | undefined {
  const nodes = outlinedBlockAt(course, ref)?.nodes;
  return nodes?.[nodes[ref.node]?.parent ?? -1]?.key;
}

/** For each position that leads to a position, the first occurrence of that step. */
function waysTo(course: Course, key: string): ReadonlyMap<string, NodeRef> {
  const at = course.graph[key]?.at ?? [];
  const byKey = known.get(course) ?? new Map<string, ReadonlyMap<string, NodeRef>>();
  known.set(course, byKey);
  const found = byKey.get(key) ?? findWays(course, at);
  byKey.set(key, found);
  return found;
}

function findWays(course: Course, at: readonly NodeRef[]): ReadonlyMap<string, NodeRef> {
  const ways = new Map<string, NodeRef>();
  for (const ref of at) {
    const way = wayAt(course, ref);
    if (way !== undefined && !ways.has(way)) ways.set(way, ref);
  }
  return ways;
}
