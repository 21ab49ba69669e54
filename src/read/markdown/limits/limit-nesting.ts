import type { Parent, PhrasingContent, RootContent } from 'mdast';
import { placeOf, type TextContext } from '../../text-context.ts';

/** How deep a text may be nested: quotes in lists in quotes, emphasis in emphasis. */
const deepestNesting = 50;

type Content = RootContent | PhrasingContent;

/**
 * Empties the nodes that lie deeper, and reports the first of them. Everything that walks a text
 * after this may call itself once a level.
 */
export function limitNesting(
  root: { children: Content[] },
  context: Pick<TextContext, 'source' | 'report'>,
): void {
  let first: Content | undefined;
  const stack = root.children.map((node) => ({ node, depth: 1 })).reverse();
  for (let item = stack.pop(); item; item = stack.pop()) {
    const { node, depth } = item;
    if (!('children' in node)) continue;
    if (depth < deepestNesting) {
      for (const child of node.children.toReversed()) stack.push({ node: child, depth: depth + 1 });
    } else if (node.children.some((child) => 'children' in child)) {
      first ??= node;
      (node as Parent).children = [];
    }
  }
  if (!first) return;
  context.report({
    place: placeOf(first, context),
    message: `This text is nested more than ${deepestNesting} levels deep.`,
    hint: 'Close the quotes, lists, brackets and emphasis that it stands in.',
  });
}
