import { gameMoves } from '../addresses/index.ts';
import { type Chapter, type Course, chapterAt, type NodeRef } from '../model/index.ts';
import type { Addresses } from './addresses.ts';
import { nodeAt, type RenderContext } from './context.ts';
import type { Meeting } from './document.ts';
import type { MoveTree } from './move-tree.ts';
import { numberedMove } from './notation.ts';

/** A board names no more places than this where move orders meet. */
const mostPlaces = 6;

/**
 * Where else the course reaches the position after a move: the first place of each other way to
 * it. A way is the position before; so beginnings that lines share are none, and a meeting is told
 * at its first position, as the check asks for (`transposition-untold`).
 */
function otherWays(course: Course, key: string, before: string | undefined): NodeRef[] {
  const places: NodeRef[] = [];
  for (const [way, ref] of waysTo(course, key)) {
    if (way !== before && places.length < mostPlaces) places.push(ref);
  }
  return places;
}

const known = new WeakMap<Course, Map<string, ReadonlyMap<string, NodeRef>>>();

/** The first place of each way to a position, by the position before it. Found once for each position. */
function waysTo(course: Course, key: string): ReadonlyMap<string, NodeRef> {
  const byKey = known.get(course) ?? new Map<string, ReadonlyMap<string, NodeRef>>();
  known.set(course, byKey);
  const found = byKey.get(key) ?? findWays(course, key);
  byKey.set(key, found);
  return found;
}

function findWays(course: Course, key: string): ReadonlyMap<string, NodeRef> {
  const ways = new Map<string, NodeRef>();
  for (const ref of course.graph[key]?.at ?? []) {
    const node = nodeAt(course, ref);
    if (node?.parent === undefined) continue;
    const way = nodeAt(course, { ...ref, node: node.parent })?.position?.key;
    if (way !== undefined && !ways.has(way)) ways.set(way, ref);
  }
  return ways;
}

/** The meetings of a tree's moves, by index: a place and the move there, for each other way. */
export function meetingsOf(
  { course, strings }: RenderContext,
  nodes: MoveTree['nodes'],
): ReadonlyMap<number, readonly Meeting[]> {
  return new Map(
    nodes.flatMap(({ index, parent, position }): [number, readonly Meeting[]][] => {
      if (parent === undefined || position === undefined) return [];
      const places = otherWays(course, position.key, nodes[parent]?.position?.key);
      const told = places.flatMap((ref): Meeting[] => {
        const move = nodeAt(course, ref)?.move;
        return move ? [{ ref, move: numberedMove(move, strings) }] : [];
      });
      return told.length === 0 ? [] : [[index, told]];
    }),
  );
}

/** The titles of the other chapters that meetings lead to, by the addresses of their pages. */
export function chaptersMet(
  course: Course,
  { blocks, file }: Chapter,
  addresses: Addresses,
): Readonly<Record<string, string>> {
  const met: Record<string, string> = {};
  for (const block of blocks) {
    if (block.kind !== 'moves' && block.kind !== 'game') continue;
    const nodes = block.kind === 'game' ? gameMoves(block).nodes : block.nodes;
    for (const { parent, position } of nodes) {
      if (parent === undefined || position === undefined) continue;
      for (const ref of otherWays(course, position.key, nodes[parent]?.position?.key)) {
        const title = chapterAt(course, ref)?.title;
        if (ref.chapter !== file && title !== undefined) met[addresses.page(ref.chapter)] = title;
      }
    }
  }
  return met;
}
