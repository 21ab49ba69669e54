import type { PhrasingContent, RootContent } from 'mdast';
import type { Block, Chapter, MoveNode } from '../types.ts';
import { walkText } from '../walk-text.ts';

type TextNode = RootContent | PhrasingContent;

/** A move of a chapter, the node that it is played from, its tree and its block. */
export interface MoveInChapter {
  readonly block: Block;
  readonly tree: readonly MoveNode[];
  readonly node: MoveNode;
  readonly parent: MoveNode;
}

/** Every tree of moves in a block: its own, and the lines of an exercise. */
export function treesOf(block: Block): (readonly MoveNode[])[] {
  if (block.kind !== 'exercise') return [block.nodes];
  return [block.nodes, ...block.answer, ...block.also, ...block.wrong];
}

/** Every move that an author wrote, in blocks of all kinds and in their attributes, in order. */
export const movesOf = ofLatest((chapter): readonly MoveInChapter[] => {
  const moves: MoveInChapter[] = [];
  for (const block of chapter.blocks) {
    for (const tree of treesOf(block)) {
      for (const node of tree) {
        const parent = node.parent === undefined ? undefined : tree[node.parent];
        if (parent) moves.push({ block, tree, node, parent });
      }
    }
  }
  return moves;
});

/** Every node of a chapter, including start positions, in order. */
export function* movesAndStarts(
  chapter: Chapter,
): Generator<{ readonly block: Block; readonly node: MoveNode }> {
  for (const block of chapter.blocks) {
    for (const node of treesOf(block).flat()) yield { block, node };
  }
}

/** The nodes of a type in all texts of a chapter, its body, comments and captions, in their order. */
export function textNodes<Type extends TextNode['type']>(
  chapter: Chapter,
  type: Type,
): readonly Extract<TextNode, { type: Type }>[] {
  return (textNodesByType(chapter).get(type) ?? []) as Extract<TextNode, { type: Type }>[];
}

const textNodesByType = ofLatest((chapter): ReadonlyMap<string, readonly TextNode[]> => {
  const nodes = new Map<string, TextNode[]>();
  const add = (node: TextNode): void => {
    const alike = nodes.get(node.type);
    if (alike) alike.push(node);
    else nodes.set(node.type, [node]);
  };
  walkText(chapter.body.children, (node) => {
    add(node);
    const block = node.type === 'courseBlock' ? chapter.blocks[node.block] : undefined;
    if (!block) return;
    for (const tree of treesOf(block)) {
      for (const { after } of tree) {
        for (const item of after) {
          if (item.type === 'comment') walkText(item.content, add);
          else for (const comment of item.before) walkText(comment.content, add);
        }
      }
    }
    if (block.kind === 'diagram') walkText(block.caption, add);
    if (block.kind === 'pattern') walkText(block.text, add);
    if (block.kind === 'exercise') {
      walkText(block.ask, add);
      for (const hint of block.hints) walkText(hint, add);
    }
  });
  return nodes;
});

/**
 * Remembers the result for the latest chapter only: rules ask about one chapter after the other, and results for all
 * chapters would cost more memory than time.
 */
function ofLatest<Made>(make: (chapter: Chapter) => Made): (chapter: Chapter) => Made {
  let latest: { readonly chapter: Chapter; readonly made: Made } | undefined;
  return (chapter) => {
    if (latest?.chapter !== chapter) latest = { chapter, made: make(chapter) };
    return latest.made;
  };
}
