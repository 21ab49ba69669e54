import {
  type Block,
  type Chapter,
  type Course,
  type MoveNode,
  modelLimits,
  playChapters,
} from '../../model/index.ts';
import { documentsOf, readChapter } from '../../read/index.ts';
import type { Asked } from '../asked.ts';

/** The course as it was last; while an author types, its names and advice hold well enough. */
export function lastCourse({ desk, course }: Asked): Course | undefined {
  return desk.last()?.course() ?? course();
}

/** Reads and plays a piece of a chapter by itself, with the names of the course. */
export function playPiece(text: string, course: Course): Chapter | undefined {
  const syntax = readChapter(
    { path: 'piece.md', text },
    { media: new Set(), frontMatter: 'optional', pieces: course.settings.pieces },
  );
  const known = documentsOf(course).map(({ file, names }) => ({ file, names }));
  const { side } = course.settings;
  const played = playChapters([...known, syntax], { side, limits: modelLimits });
  return played.find(({ file }) => file === 'piece.md')?.chapter;
}

/** Where a cursor stands in movetext. */
export interface CursorInMoves {
  /** The node whose position is on the board there. */
  readonly node: MoveNode;
  readonly block: Block;
  readonly isInComment: boolean;
}

/**
 * The place in a block's tree behind a piece of its movetext, which ends wherever the author is.
 * @param opening the opening line of the block.
 */
export function cursorInMoves(
  opening: string,
  content: string,
  course: Course,
): CursorInMoves | undefined {
  const head = `${opening.replace(/[\r\n]/g, '')}\n`;
  const marks = /^(?:`+|~+)/.exec(opening)?.[0] ?? '```';
  const block = playPiece(`${head}${content}\n${marks}\n`, course)?.blocks[0];
  const start = block?.nodes[0];
  if (!block || !start) return undefined;
  const ends = new Map<number, MoveNode>();
  for (const node of block.nodes) {
    if (node.written) ends.set(node.written.place.start.offset - head.length, node);
  }
  let node: MoveNode = start;
  const open: MoveNode[] = [];
  for (let at = 0; at < content.length; at++) {
    const sign = content[at];
    const here = ends.get(at);
    if (here) node = here;
    else if (sign === '{') {
      const end = content.indexOf('}', at);
      if (end < 0) return { node, block, isInComment: true };
      at = end;
    } else if (sign === ';' && !/\S$/.test(content.slice(0, at))) {
      const end = content.slice(at).search(/[\r\n]/);
      if (end < 0) return { node, block, isInComment: true };
      at += end;
    } else if (sign === '(') {
      open.push(node);
      node = block.nodes[node.parent ?? 0] ?? start;
    } else if (sign === ')') node = open.pop() ?? node;
  }
  return { node, block, isInComment: false };
}
