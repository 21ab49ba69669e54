import { createLocator, type Place } from '../diagnostics/index.ts';
import type { Block, MoveNode } from '../model/index.ts';
import { EditRefusedError, type NodeInChapter, type WrittenChapter } from './types.ts';

/** A block's tree as it stands in its chapter's text. */
export interface BlockText {
  readonly text: string;
  readonly block: Block;
  readonly nodes: readonly MoveNode[];
  /** What ends a line in this chapter. */
  readonly newline: string;
  /** What every line of the block begins with: the signs of a quotation, the indentation of a list. */
  readonly prefix: string;
  /** What stands between a number and its move. */
  readonly gap: string;
  place(start: number, end: number): Place;
}

/**
 * The block of a node, if its moves can be changed here.
 * @throws EditRefusedError
 */
export function blockText({ text, chapter }: WrittenChapter, at: NodeInChapter): BlockText {
  const block = chapter.blocks.find(({ key }) => key === at.block);
  if (block === undefined) {
    throw new EditRefusedError(
      'The chapter has no such block any more',
      'load the page again, and play the moves once more',
    );
  }
  if (block.kind !== 'moves' && block.kind !== 'game') {
    throw new EditRefusedError(
      'Moves are written into blocks of moves and games, and this is none',
      'choose the position in a block of moves',
    );
  }
  if (block.kind === 'game' && block.file !== chapter.file) {
    throw new EditRefusedError(
      `This game stands in \`${block.file}\`, and only chapters are written to`,
      'change the file itself, or show the position in a block of moves',
    );
  }
  const pointAt = createLocator(text);
  const lineStart = startOfLine(text, block.place.start.offset);
  return {
    text,
    block,
    nodes: block.nodes,
    newline: /\r\n|\r|\n/.exec(text)?.[0] ?? '\n',
    prefix: text.slice(lineStart, block.place.start.offset).replace(/[^>\s]/g, ' '),
    gap: gapIn(block.nodes),
    place: (start, end) => ({ file: chapter.file, start: pointAt(start), end: pointAt(end) }),
  };
}

/**
 * A node of the block.
 * @throws EditRefusedError for one that is not there.
 */
export function nodeIn({ nodes }: BlockText, { node }: NodeInChapter): MoveNode {
  const found = nodes[node];
  if (found !== undefined) return found;
  throw new EditRefusedError(
    'The block has no such move any more',
    'load the page again, and play the moves once more',
  );
}

/** What this chapter writes between a number and its move: the first number tells. */
function gapIn(nodes: readonly MoveNode[]): string {
  const first = nodes.find(({ written }) => written?.number)?.written;
  if (first?.number === undefined) return ' ';
  return first.number.place.end.offset === first.place.start.offset ? '' : ' ';
}

/** Where a move ends, with its glyphs; of a start position where the block's text begins. */
export function endOfMove({ text, block }: BlockText, { written }: MoveNode): number {
  if (written === undefined) return endOfLine(text, block.place.start.offset);
  return Math.max(written.place.end.offset, ...written.glyphs.map(({ place }) => place.end.offset));
}

/** Where all ends that stands behind a move and speaks of it: glyphs, comments, and variations on it. */
export function endOfNode(block: BlockText, node: MoveNode): number {
  return Math.max(endOfMove(block, node), node.after.at(-1)?.place.end.offset ?? 0);
}

/** Where a move begins, with its number. */
export function startOfMove({ written }: MoveNode): number {
  return written?.number?.place.start.offset ?? written?.place.start.offset ?? 0;
}

export function startOfLine(text: string, offset: number): number {
  return Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1)) + 1;
}

export function endOfLine(text: string, offset: number): number {
  const length = text.slice(offset).search(/\r|\n/);
  return length < 0 ? text.length : offset + length;
}

/** Whether a comment is one to the end of its line, behind which nothing can be written. */
export function isToLineEnd(text: string, { start }: Place): boolean {
  return text.charAt(start.offset) !== '{';
}
