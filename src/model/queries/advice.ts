import { sideToMove } from '../../chess/index.ts';
import type { Course, MoveNode, MovesBlock, NodeRef, Side } from '../types.ts';
import { blockAt } from './node-at.ts';

/** A move that the course recommends, and the node that is it. */
export interface Advice {
  readonly san: string;
  readonly ref: NodeRef;
}

const known = new WeakMap<Course, ReadonlyMap<string, readonly Advice[]>>();

/**
 * What the course advises, by the key of the position: the course side's first move at a position
 * of a `moves` block, unless `:option` or a `?`, `??`, `?!` says otherwise, of it or of a move of the course's
 * side before it, also in the blocks that its block starts from. A sound course has one
 * advice for a position, though perhaps in several places. With `side: both` there is none.
 */
export function adviceOf(course: Course): ReadonlyMap<string, readonly Advice[]> {
  const found = known.get(course) ?? collect(course);
  known.set(course, found);
  return found;
}

/**
 * Whether a node stands at or behind a move of the course's side that is an option or called bad, in its own block or
 * in those that its block starts from.
 */
export function isAside(course: Course, block: MovesBlock, node: number): boolean {
  return asideIn(block, course.settings.side).has(node) || asideStarts(course)(block);
}

function collect(course: Course): Map<string, Advice[]> {
  const advice = new Map<string, Advice[]>();
  const { side } = course.settings;
  const startsAside = asideStarts(course);
  for (const chapter of course.chapters) {
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves' || startsAside(block)) continue;
      for (const index of adviceIn(block, side)) {
        const { move, parent } = block.nodes[index] ?? {};
        const key = block.nodes[parent ?? -1]?.position?.key;
        if (!move || key === undefined) continue;
        const ref = { chapter: chapter.file, block: block.key, node: index };
        const there = advice.get(key);
        if (there) there.push({ san: move.san, ref });
        else advice.set(key, [{ san: move.san, ref }]);
      }
    }
  }
  return advice;
}

const startsKnown = new WeakMap<Course, (block: MovesBlock) => boolean>();

/** Whether a block starts from a position that stands aside in its own block, or in one before that. */
function asideStarts(course: Course): (block: MovesBlock) => boolean {
  const known = startsKnown.get(course) ?? findAsideStarts(course);
  startsKnown.set(course, known);
  return known;
}

function findAsideStarts(course: Course): (block: MovesBlock) => boolean {
  const { side } = course.settings;
  const found = new Map<MovesBlock, boolean>();
  const startsAside = (block: MovesBlock): boolean => {
    const known = found.get(block);
    if (known !== undefined) return known;
    // A circle of blocks has a finding of its own.
    found.set(block, false);
    const ref = block.from && course.labels[block.from.name]?.ref;
    const start = ref && blockAt(course, ref);
    const isAside =
      start?.kind === 'moves' && (asideIn(start, side).has(ref?.node ?? -1) || startsAside(start));
    found.set(block, isAside);
    return isAside;
  };
  return startsAside;
}

const knownIn = new WeakMap<MovesBlock, { readonly side: Side; readonly advice: Set<number> }>();

/** The nodes of a block, by index, that are advice unless what the block starts from stands aside. */
export function adviceIn(block: MovesBlock, side: Side): ReadonlySet<number> {
  const known = knownIn.get(block);
  if (known?.side === side) return known.advice;
  const advice = collectIn(block, side);
  knownIn.set(block, { side, advice });
  return advice;
}

function collectIn(block: MovesBlock, side: Side): Set<number> {
  const aside = asideIn(block, side);
  const found = new Set<number>();
  for (const node of block.nodes) {
    const before = block.nodes[node.parent ?? -1];
    if (before && !aside.has(node.index) && isAdvice(node, before, side)) found.add(node.index);
  }
  return found;
}

const asideKnown = new WeakMap<MovesBlock, { readonly side: Side; readonly aside: Set<number> }>();

/** The nodes at and behind each move of the course's side that is an option or called bad. */
function asideIn(block: MovesBlock, side: Side): ReadonlySet<number> {
  const known = asideKnown.get(block);
  if (known?.side === side) return known.aside;
  const aside = findAside(block, side);
  asideKnown.set(block, { side, aside });
  return aside;
}

function findAside({ nodes }: MovesBlock, side: Side): Set<number> {
  const found = new Set<number>();
  // Parents stand before their children.
  for (const node of nodes) {
    const isOwn = node.move?.color === side;
    if (found.has(node.parent ?? -1) || (isOwn && isRejected(node))) found.add(node.index);
  }
  return found;
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
