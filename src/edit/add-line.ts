import type { MoveNode } from '../model/index.ts';
import { movesText, playIn } from './move-text.ts';
import {
  type BlockText,
  blockText,
  endOfNode,
  isToLineEnd,
  nodeIn,
  startOfLine,
  startOfMove,
} from './node-text.ts';
import { numberAfter } from './number-after.ts';
import {
  EditRefusedError,
  type Edits,
  type NewMove,
  type NodeInChapter,
  type WrittenChapter,
} from './types.ts';

/**
 * Writes a line of moves into a block, from the position of a node on. Where the line ends there, it goes on; where
 * it has a move already, the new moves become a variation on that, behind those that it has. First moves that the
 * block has already are followed, not written.
 * @throws EditRefusedError
 */
export function addLine(
  written: WrittenChapter,
  at: NodeInChapter,
  moves: readonly NewMove[],
): Edits {
  const block = blockText(written, at);
  const { node, rest } = follow(block, nodeIn(block, at), moves);
  const [first] = node.children;
  const { position } = node;
  if (position === undefined) {
    throw new EditRefusedError(
      'Nothing can be played behind a move that is not legal',
      'mend that move first',
    );
  }
  const text = movesText(position, rest, { gap: block.gap, pieces: written.chapter.pieces });
  const next = first === undefined ? undefined : block.nodes[first];
  return next === undefined ? goOn(block, node, text) : addVariation(block, next, text);
}

/** How far the block has the moves already. */
function follow(block: BlockText, from: MoveNode, moves: readonly NewMove[]) {
  let node = from;
  let known = 0;
  for (const { san, glyphs = [], directives = [], comment = '', source = '' } of moves) {
    if (node.position === undefined) break;
    const played = playIn(node.position, san);
    const child = node.children
      .map((index) => block.nodes[index])
      .find((each) => each?.move?.san === played.san);
    if (child === undefined) break;
    if (glyphs.length > 0 || directives.length > 0 || (comment + source).trim() !== '') {
      throw new EditRefusedError(
        `The block has ${played.san} here already`,
        'go to that move, and say there what is to be said of it',
      );
    }
    node = child;
    known++;
  }
  const rest = moves.slice(known);
  if (rest.length > 0) return { node, rest };
  throw new EditRefusedError('The block has all these moves already', 'play one that is new');
}

/** Writes moves behind the last of a line. */
function goOn(block: BlockText, node: MoveNode, text: string): Edits {
  const end = endOfNode(block, node);
  const last = node.after.at(-1);
  const breaks = last
    ? endsItsLine(block, last) || startsLine(block, last.place.start.offset)
    : node.written === undefined;
  const lead = breaks ? newLine(block, node.written ? indentOf(block, node) : '') : ' ';
  return [{ place: block.place(end, end), text: lead + text }];
}

/** Writes moves as a variation on a move, in lines of their own unless its others are not. */
function addVariation(block: BlockText, on: MoveNode, text: string): Edits {
  const end = endOfNode(block, on);
  const last = on.after.at(-1);
  const sibling = on.after.findLast(({ type }) => type === 'variation');
  const isApart = sibling === undefined || startsLine(block, sibling.place.start.offset);
  const number = numberAfter(block, on);
  if (!isApart && !(last && endsItsLine(block, last))) {
    return [{ place: block.place(end, end), text: ` ( ${text} )` }, ...number];
  }
  const base = indentOf(block, on);
  const indent = sibling && isApart ? indentBefore(block, sibling.place.start.offset) : `${base}  `;
  const variation = `${newLine(block, indent)}( ${text} )`;
  const next = on.children[0] === undefined ? undefined : block.nodes[on.children[0]];
  const gap = next && block.text.slice(end, startOfMove(next));
  if (next === undefined || gap === undefined || !/^[ \t]*$/.test(gap)) {
    return [{ place: block.place(end, end), text: variation }, ...number];
  }
  // What goes on in the same line goes on in the next one; its number stands right there.
  const lead = number.map((edit) => edit.text).join('');
  const broken = `${variation}${newLine(block, base)}${lead}`;
  return [{ place: block.place(end, end + gap.length), text: broken }];
}

function newLine({ newline, prefix }: BlockText, indent: string): string {
  return newline + prefix + indent;
}

/** Whether nothing can be written behind it in the same line. */
function endsItsLine({ text }: BlockText, item: MoveNode['after'][number]): boolean {
  return item.type === 'comment' && isToLineEnd(text, item.place);
}

/** Whether nothing but the block's own indentation stands before a place in its line. */
function startsLine({ text }: BlockText, offset: number): boolean {
  return /^[\s>]*$/.test(text.slice(startOfLine(text, offset), offset));
}

/** The white space before a place that starts its line, behind what all lines of the block begin with. */
function indentBefore({ text, prefix }: BlockText, offset: number): string {
  const line = text.slice(startOfLine(text, offset), offset);
  return /[ \t]*$/.exec(line.slice(prefix.length))?.[0] ?? '';
}

/** How far the line that a move stands in is indented; one that opens a variation counts from behind its `(`. */
function indentOf(block: BlockText, node: MoveNode): string {
  const { text, prefix } = block;
  const offset = startOfMove(node);
  const line = text.slice(startOfLine(text, offset) + prefix.length, offset);
  const [, white = '', paren = ''] = /^([ \t]*)(\(\s?)?/.exec(line) ?? [];
  return white + paren.replace(/\S/g, ' ');
}
