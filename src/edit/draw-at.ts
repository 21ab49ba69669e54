import type { CommentNode, DirectiveNode, MoveNode } from '../model/index.ts';
import { type BlockText, blockText, nodeIn } from './node-text.ts';
import { sayOf } from './say-at.ts';
import type { DrawnKind, Edits, NodeInChapter, WrittenChapter } from './types.ts';
import { directiveText } from './words.ts';

/**
 * Draws a mark (`e4`) or an arrow (`e2-e4`) on the board behind a move, or takes it off where it is drawn.
 * @throws EditRefusedError
 */
export function drawAt(
  written: WrittenChapter,
  at: NodeInChapter,
  { kind, item }: { readonly kind: DrawnKind; readonly item: string },
): Edits {
  const block = blockText(written, at);
  const node = nodeIn(block, at);
  const drawn = [...drawnIn(node, kind)];
  for (const { comment, directive } of drawn) {
    const off = takeOff(block, comment, directive, item);
    if (off !== undefined) return off;
  }
  const known = drawn.at(-1);
  if (known === undefined) {
    return sayOf(block, node, directiveText({ name: kind, argument: item }));
  }
  const { offset } = known.directive.argumentRange.end;
  return [{ place: block.place(offset, offset), text: ` ${item}` }];
}

function* drawnIn(
  { after }: MoveNode,
  kind: DrawnKind,
): Generator<{ readonly comment: CommentNode; readonly directive: DirectiveNode }> {
  for (const comment of after) {
    if (comment.type !== 'comment') continue;
    for (const directive of comment.content) {
      if (directive.type === 'courseDirective' && directive.name === kind) {
        yield { comment, directive };
      }
    }
  }
}

/** Takes an item out of a directive, with all that is empty then; undefined where it is not in it. */
function takeOff(
  block: BlockText,
  comment: CommentNode,
  { argumentRange, position }: DirectiveNode,
  item: string,
): Edits | undefined {
  const { text } = block;
  const first = argumentRange.start.offset;
  const argument = text.slice(first, argumentRange.end.offset);
  const items = [...argument.matchAll(/[^\s,]+/g)];
  const found = items.find(([each]) => each === item);
  if (found === undefined) return undefined;
  if (items.length > 1) {
    const start = first + found.index;
    const isFirst = found === items[0];
    const after = isFirst ? (/^[\s,]+/.exec(text.slice(start + item.length))?.[0].length ?? 0) : 0;
    const before = isFirst ? 0 : (/[\s,]+$/.exec(text.slice(first, start))?.[0].length ?? 0);
    return [{ place: block.place(start - before, start + item.length + after), text: '' }];
  }
  const start = position?.start.offset ?? first;
  const end = position?.end.offset ?? argumentRange.end.offset;
  const within = [comment.place.start.offset + 1, comment.place.end.offset - 1] as const;
  const isAll = (text.slice(within[0], start) + text.slice(end, within[1])).trim() === '';
  const [from, to] = isAll ? [within[0] - 1, within[1] + 1] : [start, end];
  const white = /[ \t]*$/.exec(text.slice(0, from))?.[0].length ?? 0;
  return [{ place: block.place(from - white, to), text: '' }];
}
