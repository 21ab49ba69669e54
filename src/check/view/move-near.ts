import type { NodeRef } from '../../model/index.ts';
import type { CourseIndex } from './course-index.ts';

/** The move that leads to a position, and those that a reader meets on the ways there and next. */
export interface MoveNear {
  /** `7...Be7`. */
  readonly name: string;
  readonly near: readonly string[];
}

export function moveNear(index: CourseIndex, name: string): MoveNear | undefined {
  const given = index.names.get(name);
  const key = given?.position?.key;
  const own = given?.ref && nodeOf(index, given.ref)?.name;
  if (key === undefined || !own) return undefined;
  const near = new Set<string>();
  const seen = new Set<string>();
  const next = index.positions.get(key)?.from ?? [];
  for (const { node } of next) near.add(node.name);
  // Upwards by positions, so that the blocks that a block starts from are gone through too.
  for (const open = [key]; open.length > 0; ) {
    const here = open.pop() ?? '';
    if (seen.has(here)) continue;
    seen.add(here);
    for (const { node, before } of index.positions.get(here)?.at ?? []) {
      if (node.name !== '') near.add(node.name);
      if (before !== undefined) open.push(before);
    }
    if (seen.size > mostOnPaths) return undefined;
  }
  return { name: own, near: [...near] };
}

/** So many positions before a named one are looked at; where there are more, nothing is said. */
const mostOnPaths = 500;

function nodeOf({ blocks }: CourseIndex, { chapter, block, node }: NodeRef) {
  return blocks.get(`${chapter} ${block}`)?.[node]?.node;
}
