import type { Course, MoveNode, MovesBlock, Side } from '../types.ts';
import { isAdvice } from './advice-in-block.ts';

/**
 * The nodes of a block that the course teaches: those that the course's side reaches by advice alone. What follows an
 * option, a bad move or a move that is only mentioned is an illustration and need not be complete. With `side: both`
 * all nodes are taught.
 */
export function taughtNodes({ nodes }: MovesBlock, side: Side): ReadonlySet<MoveNode> {
  const taught = new Set<MoveNode>();
  // Parents precede their children.
  for (const node of nodes) {
    const parent = node.parent === undefined ? undefined : nodes[node.parent];
    if (parent === undefined) taught.add(node);
    else if (taught.has(parent) && (node.move?.color !== side || isAdvice(node, parent, side)))
      taught.add(node);
  }
  return taught;
}

/**
 * The taught nodes of all `moves` blocks. A block that starts from a named position is taught if some occurrence of
 * that position is; other blocks always are.
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
