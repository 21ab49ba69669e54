import { sideToMove } from '../../chess/index.ts';
import type { MoveNode, MovesBlock, Side } from '../types.ts';

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

/** The nodes of a block at and behind each move of the course's side that is an option or called bad. */
export function asideIn({ nodes }: MovesBlock, side: Side): ReadonlySet<number> {
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
