import { sideToMove } from '../chess/index.ts';
import type { Course, MoveNode, MovesBlock, NodeRef } from '../model/index.ts';

/** A move that the course recommends, and the node that is it. */
export interface Advice {
  readonly san: string;
  readonly ref: NodeRef;
}

const known = new WeakMap<Course, ReadonlyMap<string, readonly Advice[]>>();

/**
 * What the course advises, by the key of the position: the course side's first move at a position
 * of a `moves` block, unless `:option` or a `?`, `??`, `?!` says otherwise. A sound course has one
 * advice for a position, though perhaps in several places. With `side: both` there is none.
 */
export function adviceOf(course: Course): ReadonlyMap<string, readonly Advice[]> {
  const found = known.get(course) ?? collect(course);
  known.set(course, found);
  return found;
}

function collect(course: Course): Map<string, Advice[]> {
  const advice = new Map<string, Advice[]>();
  const { side } = course.settings;
  if (side === 'both') return advice;
  for (const chapter of course.chapters) {
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves') continue;
      for (const node of block.nodes) {
        if (!node.position || sideToMove(node.position) !== side) continue;
        const first = firstMove(node, block);
        if (!first?.move || isRejected(first)) continue;
        const { key } = node.position;
        const ref = { chapter: chapter.index, block: block.index, node: first.index };
        const there = advice.get(key);
        if (there) there.push({ san: first.move.san, ref });
        else advice.set(key, [{ san: first.move.san, ref }]);
      }
    }
  }
  return advice;
}

function firstMove(node: MoveNode, block: MovesBlock): MoveNode | undefined {
  const [first] = node.children;
  return first === undefined ? undefined : block.nodes[first];
}

function isRejected(node: MoveNode): boolean {
  return isMarkedBad(node) || node.statements.some(({ name }) => name === 'option');
}

/** `?`, `??` and `?!` are $2, $4 and $6 (PGN standard, section 10). */
export function isMarkedBad({ glyphs }: MoveNode): boolean {
  return glyphs.some((nag) => nag === 2 || nag === 4 || nag === 6);
}
