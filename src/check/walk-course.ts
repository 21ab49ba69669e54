import type { PhrasingContent, RootContent } from 'mdast';
import type { Block, Chapter, Course, MoveNode } from '../model/index.ts';
import { walkText } from '../model/index.ts';

/** A move of the course, the node it is played from and where it stands. */
export interface MoveInCourse {
  readonly chapter: Chapter;
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
export function* movesOf(course: Course): Generator<MoveInCourse> {
  for (const chapter of course.chapters) {
    for (const block of chapter.blocks) {
      for (const tree of treesOf(block)) {
        for (const node of tree) {
          const parent = node.parent === undefined ? undefined : tree[node.parent];
          if (parent) yield { chapter, block, node, parent };
        }
      }
    }
  }
}

/** Every node of the course, start positions too, in order. */
export function* movesAndStarts(
  course: Course,
): Generator<{ chapter: Chapter; block: Block; node: MoveNode }> {
  for (const chapter of course.chapters) {
    for (const block of chapter.blocks) {
      for (const node of treesOf(block).flat()) yield { chapter, block, node };
    }
  }
}

/** Visits every node of every text: chapter bodies, comments and captions, in their order. */
export function walkTexts(
  course: Course,
  visit: (node: RootContent | PhrasingContent, chapter: Chapter) => void,
): void {
  for (const chapter of course.chapters) {
    const inner = (node: RootContent | PhrasingContent) => visit(node, chapter);
    walkText(chapter.body.children, (node) => {
      visit(node, chapter);
      const block = node.type === 'courseBlock' ? chapter.blocks[node.block] : undefined;
      if (!block) return;
      for (const comment of commentsOf(block)) walkText(comment, inner);
      if (block.kind === 'diagram') walkText(block.caption, inner);
      if (block.kind === 'exercise') {
        walkText(block.ask, inner);
        walkText(block.hint, inner);
      }
    });
  }
}

function* commentsOf(block: Block): Generator<readonly PhrasingContent[]> {
  for (const node of treesOf(block).flat()) {
    for (const item of node.after) {
      if (item.type === 'comment') yield item.content;
      else for (const comment of item.before) yield comment.content;
    }
  }
}
