import type { Parent, PhrasingContent, RootContent } from 'mdast';
import { placeOf, type TextContext } from '../../text-context.ts';

/** How deep a text may be nested: quotes in lists in quotes, emphasis in emphasis. */
const deepestNesting = 50;

type Content = RootContent | PhrasingContent;

/** Empties deeper nodes and reports the first. Everything that walks the text afterwards may recurse. */
export function limitNesting(
  root: { children: Content[] },
  context: Pick<TextContext, 'source' | 'report'>,
): void {
  let first: Content | undefined;
  const walk = (nodes: readonly Content[], depth: number): void => {
    for (const node of nodes) {
      if (!('children' in node)) continue;
      if (depth < deepestNesting) walk(node.children, depth + 1);
      else if (node.children.some((child) => 'children' in child)) {
        first ??= node;
        (node as Parent).children = [];
      }
    }
  };
  walk(root.children, 1);
  if (!first) return;
  context.report({
    place: placeOf(first, context),
    message: `This text is nested more than ${deepestNesting} levels deep.`,
    hint: 'Close the quotes, lists, brackets and emphasis that it stands in.',
  });
}
