import type { Place } from '../../diagnostics/index.ts';
import type { NodeRef } from '../../model/index.ts';
import { expandPlace } from '../chapter-summary.ts';
import type { CourseIndex, Occurrence } from './course-index.ts';

/** A place where a position is reached in another way than before, and nobody says so. */
export interface Untold {
  readonly here: MoveAt;
  readonly known: MoveAt;
}

export interface MoveAt {
  readonly chapter: string;
  /** `7...Be7`. */
  readonly name: string;
  readonly place: Place;
}

const none: readonly Untold[] = [];

/** Where a position is reached in another way than at first, and neither place says so. */
export function untoldMeetings(index: CourseIndex, key: string): readonly Untold[] {
  const at = index.positions.get(key)?.at ?? [];
  if (at.length < 2) return none;
  const [first, ...others] = waysTo(index, at).filter(
    (way) => !way.some((here) => isToldAt(index, here, mostLater)),
  );
  const known = first?.[0];
  if (!known) return [];
  return others.flatMap(([here]) => (here ? [{ here: told(here), known: told(known) }] : []));
}

/** So many moves of both sides behind the meeting it may still be told. */
const mostLater = 2;

/** Whether a line says at a position, or soon behind it, that it is a named one. */
function isToldAt(index: CourseIndex, here: Occurrence, later: number): boolean {
  const { names, joined, positions } = index;
  const { chapter, block, node } = here;
  const below = joined.get(`${chapter} ${block}`)?.below ?? [];
  const isNamed = (name: string) => names.get(name)?.position?.key === node.key;
  if (node.tells?.some(isNamed) || below.some(isNamed)) return true;
  if (later === 0) return false;
  return (positions.get(node.key)?.from ?? []).some(
    (next) =>
      next.node.parent === node.index &&
      next.block === block &&
      next.chapter === chapter &&
      isToldAt(index, next, later - 1),
  );
}

/** The places of a position, grouped by the position before it: each group is one way to it. */
function waysTo(index: CourseIndex, at: readonly Occurrence[]): Occurrence[][] {
  const ways = new Map<string, Occurrence[]>();
  for (const here of at) {
    // The start of a block is no way: it is a named position, or stands for itself. Neither is a
    // position that has stood earlier in its own line.
    if (here.before === undefined || here.node.again || hasStoodBefore(index, here)) continue;
    const way = ways.get(here.before);
    if (way) way.push(here);
    else ways.set(here.before, [here]);
  }
  return [...ways.values()];
}

/** Whether a position has stood before in its line, in the blocks that its own starts from. */
function hasStoodBefore(index: CourseIndex, { chapter, block, node }: Occurrence): boolean {
  const from = index.joined.get(`${chapter} ${block}`)?.from;
  if (from === undefined) return false;
  for (const before of wayUp(index, from)) if (before.node.key === node.key) return true;
  return false;
}

/** So many nodes are looked at on a way up: no line of an opening is as long. */
const mostUp = 400;

/** The nodes from a named one up to the start of its block, and on through those it starts from. */
function* wayUp(index: CourseIndex, name: string): Generator<Occurrence> {
  const seen = new Set<string>();
  let left = mostUp;
  for (let from: string | undefined = name; from !== undefined && !seen.has(from); ) {
    seen.add(from);
    const ref: NodeRef | undefined = index.names.get(from)?.ref;
    const block: string | undefined = ref && `${ref.chapter} ${ref.block}`;
    for (let here = ref && index.blocks.get(block ?? '')?.[ref.node]; here && left > 0; left--) {
      yield here;
      here = index.blocks.get(block ?? '')?.[here.node.parent ?? -1];
    }
    from = index.joined.get(block ?? '')?.from;
  }
}

function told(occurrence: Occurrence): MoveAt {
  const { chapter, node } = occurrence;
  return { chapter, name: node.name, place: expandPlace(chapter, node.at) };
}
