import type { Place, Point } from '../../diagnostics/index.ts';
import { type Comment, type Movetext, parseMovetext } from '../../movetext/index.ts';
import type { BlockContext } from '../blocks/block-context.ts';
import { readInlines } from '../markdown/markdown.ts';
import { readInlineNodes } from '../prose/read-text-nodes.ts';
import type { TreeSyntax } from '../types.ts';
import { flattenMovetext } from './flatten-movetext.ts';
import { movetextInSan } from './in-san.ts';

/** Reads movetext and the inline Markdown of its comments. */
export function readMoves(
  text: string,
  pointAt: (offset: number) => Point,
  context: BlockContext,
): TreeSyntax {
  const san = movetextInSan(text, pointAt, context);
  return readMovetext(parseMovetext(san), pointAt, context);
}

/** Whether movetext has no move, nor anything that could be meant as one. */
export function isEmpty({ nodes, unread }: TreeSyntax): boolean {
  return nodes.length === 1 && unread === undefined;
}

/** Reads the comments of parsed movetext, and reports its problems. */
export function readMovetext(
  movetext: Movetext,
  pointAt: (offset: number) => Point,
  context: BlockContext,
  comments: 'markdown' | 'plain' = 'markdown',
): TreeSyntax {
  const place = (start: number, end: number): Place => ({
    file: context.source.file,
    start: pointAt(start),
    end: pointAt(end),
  });
  for (const { span, message, hint } of movetext.problems) {
    context.reportMoves({ place: place(span.start, span.end), message, hint });
  }
  const last = movetext.problems.at(-1)?.span;
  if (movetext.untold && last) {
    context.reportMoves({
      place: place(last.start, last.end),
      message: `Behind this, ${movetext.untold.toLocaleString('en')} more places cannot be read.`,
      hint: 'Mend the first ones: what follows them may be right then.',
    });
  }
  const marked = comments === 'markdown' ? commentsOf(movetext) : [];
  const read = readInlines(
    marked.map(({ text, span }) => ({ text, pointAt: (offset) => pointAt(span.start + offset) })),
  );
  const nodesOf = new Map(marked.map((comment, at) => [comment, read[at] ?? []]));
  return flattenMovetext(movetext, {
    file: context.source.file,
    pointAt,
    report: context.reportMoves,
    readComment(comment) {
      const nodes = nodesOf.get(comment);
      if (nodes) return readInlineNodes(nodes, context);
      const value = comment.text.trim().replace(/ {2,}/g, ' ');
      return value === '' ? [] : [{ type: 'text', value }];
    },
  });
}

/** All comments of movetext, at any depth. */
function commentsOf({ line }: Movetext): Comment[] {
  const comments: Comment[] = [];
  const lines = [line];
  for (let open = lines.pop(); open; open = lines.pop()) {
    comments.push(...open.before);
    for (const { after } of open.moves) {
      for (const item of after) {
        if (item.type === 'comment') comments.push(item);
        else lines.push(item.line);
      }
    }
  }
  return comments;
}
