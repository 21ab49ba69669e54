import { isMoveFault, type Position, playMove } from '../../chess/index.ts';
import type { NodeInWork } from './work.ts';

/**
 * Plays the moves of a tree from its start, if that is known. An unplayable move keeps its fault, and the moves
 * behind it are marked and not judged.
 */
export function playTree(nodes: readonly NodeInWork[], start: Position | undefined): void {
  for (const node of nodes) {
    if (node.parent === undefined) {
      if (start) node.position = start;
      continue;
    }
    const before = nodes[node.parent]?.position;
    if (!before || !node.written) {
      node.fault = { kind: 'after-fault' };
      continue;
    }
    const played = playMove(before, node.written.san);
    if (isMoveFault(played)) node.fault = played;
    else {
      node.move = played;
      node.position = played.after;
    }
  }
}
