import type { Position } from '../../chess/index.ts';
import type { Place } from '../../diagnostics/index.ts';
import { firstSign } from '../first-sign.ts';
import type { Block, Chapter, Course, MoveNode } from '../types.ts';
import { nodeAt } from './node-at.ts';
import { treesOf } from './walk-chapter.ts';

/** A place that shows a position. */
export interface ShownAt {
  readonly chapter: Chapter;
  readonly block: Block;
  /** The place of the move that leads there, or of the block's start. */
  readonly place: Place;
  /** The node with that position: of the block itself, or of the block whose name it shows. */
  readonly node?: MoveNode;
  /** Whether the node is among the `nodes` of the block. */
  readonly own: boolean;
}

/** Every place of a course that shows a position, in blocks of every kind, in the order of the text. */
export function shownAt(course: Course, key: string): ShownAt[] {
  const isIt = (position: Position | undefined) => position?.key === key;
  return course.chapters.flatMap((chapter) =>
    chapter.blocks.flatMap((block): ShownAt[] => {
      const start = firstSign(block.place);
      const found = treesOf(block).flatMap((tree) =>
        // Skip the start of an exercise's line: it repeats the exercise's position.
        tree.flatMap((node, at): ShownAt[] =>
          isIt(node.position) && (tree === block.nodes || at > 0)
            ? [
                {
                  chapter,
                  block,
                  node,
                  place: node.written?.place ?? start,
                  own: tree === block.nodes,
                },
              ]
            : [],
        ),
      );
      if (block.kind !== 'diagram' && block.kind !== 'exercise') return found;
      if (!isIt(block.position) || found.some(({ own }) => own)) return found;
      const node = block.shows && nodeAt(course, block.shows);
      return [{ chapter, block, place: start, ...(node && { node }), own: false }, ...found];
    }),
  );
}
