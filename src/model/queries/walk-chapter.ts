import type { PhrasingContent, RootContent } from 'mdast';
import type { Block, Chapter, MoveNode } from '../types.ts';
import { walkText } from '../walk-text.ts';

/** A move of a chapter, the node it is played from and the block it stands in. */
export interface MoveInChapter {
  readonly block: Block;
  readonly node: MoveNode;
  readonly parent: MoveNode;
}

/** Every tree of moves in a block: its own, and the lines of an exercise. */
export function treesOf(block: Block): (readonly MoveNode[])[] {
  if (block.kind !== 'exercise') return [block.nodes];
  return [block.nodes, ...block.answer, ...block.also, ...block.wrong];
}

/** Every move that an author wrote, in blocks of all kinds and in their attributes, in order. */
export function* movesOf(chapter: Chapter): Generator<MoveInChapter> {
  for (const block of chapter.blocks) {
    for (const tree of treesOf(block)) {
      for (const node of tree) {
        const parent = node.parent === undefined ? undefined : tree[node.parent];
        if (parent) yield { block, node, parent };
      }
    }
  }
}

/** Every node of a chapter, start positions too, in order. */
export function* movesAndStarts(
  chapter: Chapter,
): Generator<{ readonly block: Block; readonly node: MoveNode }> {
  for (const block of chapter.blocks) {
    for (const node of treesOf(block).flat()) yield { block, node };
  }
}

/** Visits every node of every text of a chapter: its body, comments and captions, in their order. */
export function walkTexts(
  chapter: Chapter,
  visit: (node: RootContent | PhrasingContent) => void,
): void {
  walkText(chapter.body.children, (node) => {
    visit(node);
    const block = node.type === 'courseBlock' ? chapter.blocks[node.block] : undefined;
    if (!block) return;
    for (const comment of commentsOf(block)) walkText(comment, visit);
    if (block.kind === 'diagram') walkText(block.caption, visit);
    if (block.kind === 'pattern') walkText(block.text, visit);
    if (block.kind === 'exercise') {
      walkText(block.ask, visit);
      for (const hint of block.hints) walkText(hint, visit);
    }
  });
}

function* commentsOf(block: Block): Generator<readonly PhrasingContent[]> {
  for (const node of treesOf(block).flat()) {
    for (const item of node.after) {
      if (item.type === 'comment') yield item.content;
      else for (const comment of item.before) yield comment.content;
    }
  }
}
