import type { PhrasingContent, RootContent } from 'mdast';
import type { DirectiveNode, ProseMovesNode } from '../../read/index.ts';
import { walkText } from '../walk-text.ts';

/** Something that shows a position in a chapter's text: a block, or moves that the text mentions. */
export interface Showing {
  /** The index of the block, or for moves of the last block before them; -1 for none. */
  readonly block: number;
  readonly moves?: ProseMovesNode;
}

/** Everything that shows a position in a chapter, in the order of the text, and where directives stand among it. */
export interface ShowingOrder {
  readonly all: readonly Showing[];
  /** How many of them stand before a directive of the text. */
  readonly before: ReadonlyMap<DirectiveNode, number>;
}

export function orderShowing(nodes: readonly (RootContent | PhrasingContent)[]): ShowingOrder {
  const all: Showing[] = [];
  const before = new Map<DirectiveNode, number>();
  let block = -1;
  walkText(nodes, (node) => {
    if (node.type === 'courseBlock') {
      block = node.block;
      all.push({ block });
    } else if (node.type === 'proseMoves') all.push({ block, moves: node });
    else if (node.type === 'courseDirective') before.set(node, all.length);
  });
  return { all, before };
}
