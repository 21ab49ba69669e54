import { gameMoves } from '../../addresses/index.ts';
import type { NodeRef } from '../../model/index.ts';
import type { Addresses } from '../addresses.ts';
import type { Ask } from '../ask/ask.ts';
import type { RenderContext } from '../context.ts';
import type { Meeting } from '../document.ts';
import { numberedMove } from '../notation.ts';
import type { MoveTree } from './move-tree.ts';

/** The most places that a board names where move orders meet. */
const mostPlaces = 6;

/**
 * Where else the course reaches the positions of a tree, by index: the first occurrence of each other way. A way is
 * the position before, so a common beginning is none, and a meeting is told once, at its first position, as
 * `transposition-untold` demands.
 */
function otherWays(
  ask: Ask,
  nodes: MoveTree['nodes'],
): readonly (readonly [index: number, places: readonly NodeRef[]])[] {
  const keys = nodes.map(({ position }) => position?.key ?? null);
  const parents = nodes.map(({ parent }) => parent ?? null);
  return ask('otherWays', { keys, parents }).map(([index, places]) => [
    index,
    places.slice(0, mostPlaces),
  ]);
}

/** The meetings of a tree's moves, by index: for each other way a place and the move there. */
export function meetingsOf(
  { ask, strings }: RenderContext,
  nodes: MoveTree['nodes'],
): ReadonlyMap<number, readonly Meeting[]> {
  return new Map(
    otherWays(ask, nodes).flatMap(([index, places]): [number, readonly Meeting[]][] => {
      const told = places.flatMap((ref): Meeting[] => {
        const move = ask('move', ref);
        return move ? [{ ref, move: numberedMove(move, strings) }] : [];
      });
      return told.length === 0 ? [] : [[index, told]];
    }),
  );
}

/** The titles of other chapters that meetings lead to, by their addresses. */
export function chaptersMet(
  { ask, chapter: { blocks, file } }: Pick<RenderContext, 'ask' | 'chapter'>,
  addresses: Addresses,
): Readonly<Record<string, string>> {
  const met: Record<string, string> = {};
  for (const block of blocks) {
    if (block.kind !== 'moves' && block.kind !== 'game') continue;
    const nodes = block.kind === 'game' ? gameMoves(block).nodes : block.nodes;
    for (const [, places] of otherWays(ask, nodes)) {
      for (const ref of places) {
        if (ref.chapter === file) continue;
        const title = ask('chapter', ref.chapter)?.title;
        if (title !== undefined) met[addresses.page(ref.chapter)] = title;
      }
    }
  }
  return met;
}
