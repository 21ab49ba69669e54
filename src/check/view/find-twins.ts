import { initialPosition } from '../../chess/index.ts';
import type { CourseIndex, Occurrence } from './course-index.ts';

/** A position as others speak of it. */
export interface PositionTold {
  readonly key: string;
  /** The move that leads there first, `7...Be7`; empty for a position that blocks only start from. */
  readonly name: string;
}

/**
 * Positions of the course with the same board as this one and another side to move or other rights. None where
 * a move of the course leads to this very position: then both are meant.
 */
export function findTwins(index: CourseIndex, key: string): readonly PositionTold[] {
  if (isReached(index, key)) return [];
  return (byBoard(index).get(boardOf(key)) ?? [])
    .filter((other) => other !== key && isReached(index, other, key))
    .map((other) => ({ key: other, name: firstReached(index, other)?.node.name ?? '' }));
}

/** The first place of a position that a move leads to; of those that blocks only start from where there is none. */
export function firstOf(at: readonly Occurrence[]): Occurrence | undefined {
  return at.find(({ before }) => before !== undefined) ?? at[0];
}

export function firstReached({ positions }: CourseIndex, key: string): Occurrence | undefined {
  return firstOf(positions.get(key)?.at ?? []);
}

/**
 * Whether moves of the course lead to a position: a block that sets it up proves nothing, nor does a line that
 * comes back to the board it began with.
 */
function isReached({ positions, blocks }: CourseIndex, key: string, from?: string): boolean {
  if (key === initialPosition.key) return true;
  const startOf = ({ chapter, block }: Occurrence) =>
    blocks.get(`${chapter} ${block}`)?.[0]?.node.key;
  const all = positions.get(key)?.at ?? [];
  return all.some((here) => here.before !== undefined && startOf(here) !== from);
}

const boards = new WeakMap<CourseIndex, ReadonlyMap<string, readonly string[]>>();

/** The positions of the course by what stands on the board. */
function byBoard(index: CourseIndex): ReadonlyMap<string, readonly string[]> {
  const known = boards.get(index);
  if (known) return known;
  const made = new Map<string, string[]>();
  for (const key of [initialPosition.key, ...index.positions.keys()]) {
    const there = made.get(boardOf(key));
    if (!there) made.set(boardOf(key), [key]);
    else if (!there.includes(key)) there.push(key);
  }
  boards.set(index, made);
  return made;
}

function boardOf(key: string): string {
  return key.slice(0, key.indexOf(' '));
}
