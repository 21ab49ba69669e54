import type { PhrasingContent, RootContent } from 'mdast';

type TextNode = RootContent | PhrasingContent;

/** Visits text nodes in order, at any depth. */
export function walkText(nodes: readonly TextNode[], visit: (node: TextNode) => void): void {
  for (const node of nodes) {
    visit(node);
    if ('children' in node) walkText(node.children, visit);
  }
}
