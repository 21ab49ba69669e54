import type { Course, MoveNode, MovesBlock, Side } from '../types.ts';
import { isAdvice } from './advice-in-block.ts';

/**
 * The nodes of a block that its course teaches: those behind no move of the course's own side but its advice. What
 * stands behind an option, a bad move or a move that is only mentioned shows something, and need not be whole. With
 * `side: both` all are.
 */
export function taughtNodes({ nodes }: MovesBlock, side: Side): ReadonlySet<MoveNode> {
  const taught = new Set<MoveNode>();
  // Parents stand before their children.
  for (const node of nodes) {
    const parent = node.parent === undefined ? undefined : nodes[node.parent];
    if (parent === undefined) taught.add(node);
    else if (taught.has(parent) && (node.move?.color !== side || isAdvice(node, parent, side)))
      taught.add(node);
  }
  return taught;
}

/**
 * The nodes of all `moves` blocks that a course teaches. A block that starts from a named position is taught if that
 * position is, in some place; one that starts elsewhere is.
 */
export function taughtInCourse(course: Course): ReadonlySet<MoveNode> {
  const { side } = course.settings;
  const taught = new Set<MoveNode>();
  const keys = new Set<string>();
  let waiting = course.chapters.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'moves' ? [block] : [])),
  );
  for (let before = -1; before !== waiting.length; ) {
    before = waiting.length;
    waiting = waiting.filter((block) => {
      const start = block.nodes[0]?.position?.key ?? '';
      if (block.from && !keys.has(start)) return true;
      for (const node of taughtNodes(block, side)) {
        taught.add(node);
        if (node.position) keys.add(node.position.key);
      }
      return false;
    });
  }
  return taught;
}
