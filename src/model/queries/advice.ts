import { sideToMove } from '../../chess/index.ts';
import type { Course, MoveNode, NodeRef, Side } from '../types.ts';

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
  for (const chapter of course.chapters) {
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves') continue;
      for (const node of block.nodes) {
        const move = block.nodes[node.children[0] ?? -1];
        if (!node.position || !move?.move || !isAdvice(move, node, side)) continue;
        const { key } = node.position;
        const ref = { chapter: chapter.file, block: block.key, node: move.index };
        const there = advice.get(key);
        if (there) there.push({ san: move.move.san, ref });
        else advice.set(key, [{ san: move.move.san, ref }]);
      }
    }
  }
  return advice;
}

/** Whether a move of a `moves` block is the course's own: the first one that its side has there. */
export function isAdvice(node: MoveNode, before: MoveNode, side: Side): boolean {
  return (
    side !== 'both' &&
    before.children[0] === node.index &&
    before.position !== undefined &&
    sideToMove(before.position) === side &&
    node.move !== undefined &&
    !isRejected(node)
  );
}

function isRejected(node: MoveNode): boolean {
  return isMarkedBad(node) || node.statements.some(({ name }) => name === 'option');
}

/** `?`, `??` and `?!` are $2, $4 and $6 (PGN standard, section 10). */
export function isMarkedBad({ glyphs }: Pick<MoveNode, 'glyphs'>): boolean {
  return glyphs.some(isBadSign);
}

export function isBadSign(nag: number): boolean {
  return nag === 2 || nag === 4 || nag === 6;
}
