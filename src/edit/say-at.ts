import type { CommentNode, MoveNode } from '../model/index.ts';
import { type BlockText, blockText, endOfMove, isToLineEnd, nodeIn } from './node-text.ts';
import { numberAfter } from './number-after.ts';
import {
  EditRefusedError,
  type Edits,
  type NewWords,
  type NodeInChapter,
  type WrittenChapter,
} from './types.ts';
import { wordsText } from './words.ts';

/**
 * Says something of a position: at the end of the comment behind its move, or in a new one.
 * @throws EditRefusedError
 */
export function sayAt(written: WrittenChapter, at: NodeInChapter, words: NewWords): Edits {
  const block = blockText(written, at);
  return sayOf(block, nodeIn(block, at), wordsText(words));
}

/** @param text what the comment gets, as it is written. */
export function sayOf(block: BlockText, node: MoveNode, text: string): Edits {
  if (text === '') throw new EditRefusedError('Nothing is said', 'write some words');
  const comment = ownComment(block, node);
  if (comment !== undefined) {
    const end = comment.place.end.offset - 1;
    const lead = /[\s{]/.test(block.text.charAt(end - 1)) ? '' : ' ';
    return [{ place: block.place(end, end), text: lead + text }];
  }
  const end = endOfMove(block, node);
  const first = node.after[0];
  if (node.written === undefined) {
    return [{ place: block.place(end, end), text: `${block.newline}${block.prefix}{${text}}` }];
  }
  // Another comment already stands between this move and the next.
  const number = first === undefined ? numberAfter(block, node) : [];
  return [{ place: block.place(end, end), text: ` {${text}}` }, ...number];
}

/** The first comment in braces that speaks of a node, and stands before any variation. */
function ownComment({ text }: BlockText, { after }: MoveNode): CommentNode | undefined {
  const end = after.findIndex(({ type }) => type === 'variation');
  return after
    .slice(0, end < 0 ? after.length : end)
    .find((item): item is CommentNode => item.type === 'comment' && !isToLineEnd(text, item.place));
}
