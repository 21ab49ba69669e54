import type { Chapter, DirectiveNode, NodeRef, ProseMovesNode } from '../types.ts';

/** The node that a directive speaks of; undefined for a directive about its line alone. */
export function speaksOf({ spoken }: Chapter, { id }: DirectiveNode): NodeRef | undefined {
  return spoken.directives[id];
}

/** The nodes of the moves that a text mentions; undefined for one that no block has. */
export function movesSpokenOf(
  { spoken }: Chapter,
  { id, moves }: ProseMovesNode,
): (NodeRef | undefined)[] {
  return moves.map((_, index) => spoken.moves[id]?.[index] ?? undefined);
}
