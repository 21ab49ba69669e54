import type { GameExit, GraphPosition, MoveNode } from './types.ts';

/**
 * Follows a game's main line through the course: the last position that the course knows, by
 * whatever order of moves the game reached it.
 */
export function followGame(
  nodes: readonly MoveNode[],
  graph: Readonly<Record<string, GraphPosition>>,
): GameExit | undefined {
  let exit: GameExit | undefined;
  for (let node = nodes[0]; node; ) {
    const [nextIndex] = node.children;
    const next = nextIndex === undefined ? undefined : nodes[nextIndex];
    const [ref] = (node.position && graph[node.position.key]?.at) ?? [];
    if (ref) exit = { node: node.index, ref, ...(next ? { next: next.index } : {}) };
    node = next;
  }
  // The initial position alone is no part of a course.
  return exit && exit.node > 0 ? exit : undefined;
}
