import { initialPosition } from '../../chess/index.ts';
import { mainLine } from '../main-line.ts';
import type { GameExit, GraphPosition, MoveNode } from '../types.ts';

/** Finds the last position of a game's main line that the course knows, whatever the order of moves. */
export function followGame(
  nodes: readonly MoveNode[],
  graph: Readonly<Record<string, GraphPosition>>,
): GameExit | undefined {
  let exit: GameExit | undefined;
  for (const { index, position, children } of mainLine(nodes)) {
    const [ref] = (position && graph[position.key]?.at) ?? [];
    const [next] = children;
    if (ref) exit = { node: index, ref, ...(next === undefined ? {} : { next }) };
  }
  // Known start positions count, except for the initial position alone.
  const isInitial = exit?.node === 0 && nodes[0]?.position?.key === initialPosition.key;
  return isInitial ? undefined : exit;
}
