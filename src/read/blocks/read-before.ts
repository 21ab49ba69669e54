import { readMoves } from '../moves/read-moves.ts';
import type { TreeSyntax, WrittenNode } from '../types.ts';
import type { YamlResult } from '../yaml/read-yaml.ts';
import type { BlockContext } from './block-context.ts';
import type { Fence } from './fence.ts';

const howToWrite =
  'Write the one move that the other side has just made, such as before="14. Qa4".';

/** Reads the move that the other side makes before the question: an attribute, or a line of the body. */
export function readBefore(
  fence: Fence,
  inBody: string | undefined,
  yaml: YamlResult<unknown>,
  context: BlockContext,
): TreeSyntax | undefined {
  const attribute = fence.attributes.get('before');
  if (attribute && inBody !== undefined) {
    context.report({
      place: attribute.namePlace,
      message: 'This exercise says twice which move comes before it.',
      hint: 'Keep the attribute `before`, or the line `before:`.',
    });
  }
  if (!attribute && inBody === undefined) return undefined;
  const text = attribute?.text ?? inBody ?? '';
  const place = attribute?.place ?? yaml.placeOf('before');
  const pointAt = attribute
    ? (offset: number) => context.source.pointAt(attribute.place.start.offset + offset)
    : yaml.locatorOf('before');
  const tree = readMoves(text, pointAt, context);
  const [start, move, second] = tree.nodes;
  if (start && move && !second) return tree;
  // If it cannot be read at all, that is reported already.
  if (tree.unread === undefined) {
    context.report({
      place: second?.written?.place ?? place,
      message: second
        ? 'More than one move stands under `before` here.'
        : 'No move stands under `before` here.',
      hint: howToWrite,
    });
  }
  return move && { ...tree, nodes: tree.nodes.slice(0, 2).map(withoutOthers) };
}

/** A copy of the start or of the first move, without what follows it. */
function withoutOthers(node: WrittenNode): WrittenNode {
  return {
    ...node,
    children: node.index === 0 ? [1] : [],
    after: node.after.filter(({ type }) => type === 'comment'),
  };
}

/** A tree whose main line goes on with the one move of another. */
export function appendMove(tree: TreeSyntax | undefined, last: TreeSyntax): TreeSyntax {
  const move = last.nodes[1];
  if (!tree || !move) return last;
  let end: WrittenNode | undefined = tree.nodes[0];
  for (let next = end; next; next = tree.nodes[next.children[0] ?? -1]) end = next;
  if (!end) return last;
  const { index: parent } = end;
  const index = tree.nodes.length;
  return {
    ...tree,
    ...(last.unread && !tree.unread && { unread: last.unread }),
    nodes: [
      ...tree.nodes.map((node) =>
        node.index === parent ? { ...node, children: [index, ...node.children] } : node,
      ),
      { ...move, index, parent },
    ],
    comments: [
      ...tree.comments,
      ...last.comments.map((comment) => ({
        ...comment,
        node: comment.node === 0 ? parent : index,
      })),
    ],
  };
}
