import type { PhrasingContent } from 'mdast';
import type { Place, Point } from '../diagnostics/index.ts';
import { parseMovetext } from '../movetext/index.ts';
import type { Comment, Line, Movetext } from '../movetext/types.ts';
import type { BlockContext } from './block-context.ts';
import { readInlineText } from './read-text-nodes.ts';
import type { MovetextDraft } from './types.ts';

/** Reads movetext and the inline Markdown of its comments. */
export function readMoves(
  text: string,
  pointAt: (offset: number) => Point,
  context: BlockContext,
): MovetextDraft {
  return readMovetext(parseMovetext(text), pointAt, context);
}

/** Whether movetext has no move, and nothing that could be meant as one. */
export function isEmpty({ movetext }: MovetextDraft): boolean {
  return movetext.line.moves.length === 0 && movetext.problems.length === 0;
}

/** Reads the comments of movetext that is parsed already, and reports its problems. */
export function readMovetext(
  movetext: Movetext,
  pointAt: (offset: number) => Point,
  context: BlockContext,
  comments: 'markdown' | 'plain' = 'markdown',
): MovetextDraft {
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
  const contents = new Map<Comment, PhrasingContent[]>();
  const lines: Line[] = [movetext.line];
  for (let line = lines.pop(); line; line = lines.pop()) {
    const items = [...line.before, ...line.moves.flatMap((move) => move.after)];
    for (const item of items) {
      if (item.type === 'variation') lines.push(item.line);
      else {
        const { text } = item;
        if (comments === 'plain') {
          const value = text.trim().replace(/ {2,}/g, ' ');
          contents.set(item, value === '' ? [] : [{ type: 'text', value }]);
          continue;
        }
        const inFile = (offset: number) => pointAt(item.span.start + offset);
        contents.set(item, readInlineText(text, inFile, context));
      }
    }
  }
  return { movetext, file: context.source.file, pointAt, comments: contents };
}
