import type { Course, NodeRef } from '../types.ts';
import { type BlockOutline, outlinedBlockAt, outlineOf } from './outline.ts';

/** A recommended move and its node. */
export interface Advice {
  readonly san: string;
  readonly ref: NodeRef;
}

const known = new WeakMap<Course, ReadonlyMap<string, readonly Advice[]>>();

/**
 * What the course advises, by position key: the first move of the course's side at a position of a `moves` block,
 * unless `:option` or a `?`, `??`, `?!` excludes it or an earlier move of that side, also in the blocks that its
 * block starts from. A sound course has one advice for a position, perhaps in several places. With `side: both` there
 * is none.
 */
export function adviceOf(course: Course): ReadonlyMap<string, readonly Advice[]> {
  const found = known.get(course) ?? collect(course);
  known.set(course, found);
  return found;
}

/**
 * Whether a block starts from a position at or behind a move of the course's side that is an option or called bad, in its
 * own block or in one before that.
 */
export function asideStarts(course: Course): (block: BlockOutline) => boolean {
  const known = startsKnown.get(course) ?? findAsideStarts(course);
  startsKnown.set(course, known);
  return known;
}

const startsKnown = new WeakMap<Course, (block: BlockOutline) => boolean>();

function findAsideStarts(course: Course): (block: BlockOutline) => boolean {
  const found = new Map<BlockOutline, boolean>();
  const startsAside = (block: BlockOutline): boolean => {
    const known = found.get(block);
    if (known !== undefined) return known;
    // A circle of blocks has a finding of its own.
    found.set(block, false);
    const ref = block.from === undefined ? undefined : course.labels[block.from]?.ref;
    const start = ref && outlinedBlockAt(course, ref);
    const isAside =
      start !== undefined &&
      (start.nodes[ref?.node ?? -1]?.aside === true || startsAside(start.block));
    found.set(block, isAside);
    return isAside;
  };
  return startsAside;
}

function collect(course: Course): Map<string, Advice[]> {
  const advice = new Map<string, Advice[]>();
  const startsAside = asideStarts(course);
  for (const chapter of course.chapters) {
    for (const block of outlineOf(course, chapter).blocks) {
      if (startsAside(block)) continue;
      const keys: string[] = [];
      for (const { index, parent = -1, key: own, san, advised } of block.nodes) {
        keys[index] = own;
        const key = keys[parent];
        if (!advised || san === undefined || key === undefined) continue;
        const ref = { chapter: chapter.file, block: block.key, node: index };
        const there = advice.get(key);
        if (there) there.push({ san, ref });
        else advice.set(key, [{ san, ref }]);
      }
    }
  }
  return advice;
}
