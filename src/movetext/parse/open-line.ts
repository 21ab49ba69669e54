import { isMoveSuffix } from '../glyphs.ts';
import type { Scanned } from '../scan/scanner.ts';
import type { Comment, Glyph, Span, Token, Variation, WrittenNumber } from '../types.ts';

export interface OpenMove {
  number?: WrittenNumber;
  san: Token;
  glyphs: Glyph[];
  after: (Comment | Variation)[];
}

export interface OpenLine {
  before: Comment[];
  moves: OpenMove[];
  result?: Token;
  span: { start: number; end: number };
}

/** A line that is being read: the main line, or a variation whose `)` has not come yet. */
export interface Frame {
  readonly line: OpenLine;
  /** The `(`; the main line has none. */
  readonly opening?: Span;
  /** What becomes of it: left out, and with `silent` also without reports from within. */
  readonly fate: 'kept' | 'left-out' | 'silent';
  /** The suffix that is written behind its last move. */
  suffix?: Glyph | undefined;
  /** The text after its result: its first token, and where it ends. */
  overrun?: { readonly first: Span; end: number };
}

export function openLine(start: number): OpenLine {
  return { before: [], moves: [], span: { start, end: start } };
}

export function addComment({ line }: Frame, comment: Comment): void {
  (line.moves.at(-1)?.after ?? line.before).push(comment);
}

/** Whether a glyph is written as a suffix of a move, such as `!?`. */
export function isSuffix({ nag, text }: Glyph): boolean {
  return isMoveSuffix(nag) && !text.startsWith('$');
}

export function spanOf({ start, end }: Scanned): Span {
  return { start, end };
}
