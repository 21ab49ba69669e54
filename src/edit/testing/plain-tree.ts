import type { PhrasingContent } from 'mdast';
import type { TreeSyntax } from '../../read/index.ts';

/** A tree of moves without its places: what a chapter means. */
export interface PlainNode {
  readonly san: string;
  glyphs: number[];
  /** What is said of the position: each comment as JSON. */
  says: string[];
  /** What is said before the first move of the variation that this node begins. */
  readonly before: readonly string[];
  readonly children: PlainNode[];
}

export function plainTree({ nodes }: TreeSyntax): PlainNode {
  const plain = nodes.map(
    ({ written, glyphs, after }): PlainNode => ({
      san: written?.san ?? '',
      glyphs: [...glyphs],
      says: after.flatMap((item) => (item.type === 'comment' ? [saidIn(item.content)] : [])),
      before: nodes.flatMap((other) =>
        other.after.flatMap((item) =>
          item.type === 'variation' && nodes[item.first]?.written === written
            ? item.before.map(({ content }) => saidIn(content))
            : [],
        ),
      ),
      children: [],
    }),
  );
  for (const { index, children } of nodes) {
    for (const child of children) {
      const node = plain[child];
      if (node) plain[index]?.children.push(node);
    }
  }
  const [start] = plain;
  if (start === undefined) throw new Error('a tree has a start');
  return start;
}

/** The nodes of a plain tree as the text has them: by their index in the block. */
export function inOrder(tree: TreeSyntax, start: PlainNode): PlainNode[] {
  const all: PlainNode[] = [];
  const visit = (node: PlainNode, index: number) => {
    all[index] = node;
    tree.nodes[index]?.children.forEach((child, at) => {
      const next = node.children[at];
      if (next) visit(next, child);
    });
  };
  visit(start, 0);
  return all;
}

export function saidIn(content: readonly PhrasingContent[]): string {
  return JSON.stringify(content, (key, value: unknown) =>
    /^(?:position|id|\w*Range|data)$/.test(key) ? undefined : value,
  );
}
