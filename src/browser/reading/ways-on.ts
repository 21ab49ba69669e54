import type { Spot } from '../spots.ts';

/**
 * The moves that go on from a position, the main one first: of its own block, and of those that begin with the
 * position.
 */
export function findWaysOn(spots: ReadonlyMap<Element, Spot>): (spot: Spot) => readonly Spot[] {
  const starts = new Map<string, Spot[]>();
  for (const spot of spots.values()) {
    if (spot.parent !== undefined || spot.home !== undefined) continue;
    starts.set(spot.address, [...(starts.get(spot.address) ?? []), spot]);
  }
  return (spot) => {
    const ways = new Map<string | undefined, Spot>();
    for (const { children } of [spot, ...(starts.get(spot.address) ?? [])]) {
      for (const way of children) if (!ways.has(way.move?.san)) ways.set(way.move?.san, way);
    }
    return [...ways.values()];
  };
}
