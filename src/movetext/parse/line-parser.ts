import type { Scanned } from '../scan/scanner.ts';
import type { Span, Token, WrittenNumber } from '../types.ts';
import { addComment, type Frame, isSuffix, type OpenMove, openLine, spanOf } from './open-line.ts';
import type { ProblemList } from './problem-list.ts';
import * as problems from './problems.ts';

/**
 * Makes the main line of a game and its variations of tokens. Nesting is held on a stack, so that its
 * depth is limited by memory only.
 */
export class LineParser {
  readonly root: Frame;
  readonly #text: string;
  readonly #problems: ProblemList;
  readonly #stack: Frame[];
  #frame: Frame;
  /** A move number whose move has not come yet. */
  #number: WrittenNumber | undefined;
  /** Whether the tag section is over. */
  isInMoves = false;

  constructor(text: string, start: number, found: ProblemList) {
    this.#text = text;
    this.#problems = found;
    this.root = { line: openLine(start), fate: 'kept' };
    this.#frame = this.root;
    this.#stack = [this.root];
  }

  read(token: Scanned): void {
    const mayBeProse = ['comment', 'words', 'near-move'].includes(token.kind);
    if (!mayBeProse) this.isInMoves = true;
    const { line, fate } = this.#frame;
    if (token.kind === 'close' && this.#frame !== this.root) this.#close(token);
    else if (fate === 'silent') this.#readSilently(token);
    else if (token.kind === 'comment') this.#readComment(token);
    else if (line.result === undefined) this.#readInLine(token);
    else this.#readAfterResult(token);
  }

  /** Ends the game, whose last token ends at an offset. */
  finish(lastEnd: number): void {
    this.#problems.endRun();
    this.#dropNumber();
    while (this.#frame.opening !== undefined) {
      const { line, opening, fate } = this.#frame;
      // A result at the end of an unclosed variation is that of the game.
      this.#reportOverrun();
      if (line.result !== undefined && fate !== 'silent') {
        this.root.line.result ??= line.result;
        delete line.result;
      }
      this.#pop({ start: lastEnd, end: lastEnd });
      if (fate !== 'silent') this.#problems.report(problems.variationUnclosed(opening));
    }
    this.#reportOverrun();
    this.root.line.span.end = Math.max(lastEnd, this.root.line.span.start);
  }

  #reportOverrun(): void {
    const { line, overrun } = this.#frame;
    if (overrun === undefined || line.result === undefined) return;
    const { first, end } = overrun;
    const lost = { start: first.start, end };
    delete this.#frame.overrun;
    this.#problems.report(problems.textAfterResult(first, line.result.text, lost));
  }

  #readSilently(token: Scanned): void {
    if (token.kind === 'open') this.#push(token, 'silent');
  }

  #readInLine(token: Exclude<Scanned, { kind: 'comment' }>): void {
    switch (token.kind) {
      case 'number':
        this.#readNumber(token);
        return;
      case 'move':
        this.#readMove(token);
        return;
      case 'glyph':
        this.#readGlyph(token, token.nag);
        return;
      case 'novelty':
        if (this.#frame.line.moves.length > 0 && this.#number === undefined) {
          this.#readGlyph(token, 146);
        } else this.#readWords(token);
        return;
      case 'open':
        this.#open(token);
        return;
      case 'close':
        this.#problems.report(problems.variationUnopened(spanOf(token)));
        return;
      case 'result':
        this.#dropNumber();
        this.#frame.line.result = { text: token.result, span: spanOf(token) };
        return;
      case 'near-move':
        if (token.sure || this.#number !== undefined) this.#readMove(token);
        else this.#readWords(token);
        return;
      case 'words':
        this.#readWords(token);
        return;
      case 'tag':
        this.#dropNumber();
        this.#problems.extendRun('tag', token);
        return;
    }
  }

  #readNumber(token: Scanned & { kind: 'number' }): void {
    this.#dropNumber();
    this.#number = { ...this.#tokenOf(token), value: token.value, dots: token.dots };
  }

  #readMove(token: Scanned): void {
    this.isInMoves = true;
    const move: OpenMove = { san: this.#tokenOf(token), glyphs: [], after: [] };
    if (this.#number !== undefined) move.number = this.#number;
    this.#frame.line.moves.push(move);
    this.#frame.suffix = undefined;
    this.#number = undefined;
  }

  #readComment(token: Scanned & { kind: 'comment' }): void {
    const { start, end, form, closed } = token;
    const span = { start: start + 1, end: form === 'brace' && closed ? end - 1 : end };
    const text = this.#text.slice(span.start, span.end);
    addComment(this.#frame, { type: 'comment', form, text, span, outer: spanOf(token) });
    if (!closed) this.#problems.report(problems.commentUnclosed({ start, end: start + 1 }));
  }

  #readGlyph(token: Scanned, nag: number | undefined): void {
    const { text, span } = this.#tokenOf(token);
    const move = this.#frame.line.moves.at(-1);
    if (nag === undefined) {
      this.#problems.report(problems.glyphUnreadable(span, text));
    } else if (move === undefined || this.#number !== undefined) {
      this.#problems.report(problems.glyphMisplaced(span, text));
    } else {
      const glyph = { text, span, nag };
      const first = isSuffix(glyph) ? this.#frame.suffix : undefined;
      if (first !== undefined) {
        this.#problems.report(problems.suffixRepeated(span, text, first.text));
        return;
      }
      move.glyphs.push(glyph);
      if (isSuffix(glyph)) this.#frame.suffix = glyph;
    }
  }

  #readWords(token: Scanned): void {
    if (!this.isInMoves && this.#text.charCodeAt(token.start) === 91) {
      this.#problems.report(problems.tagUnreadable(spanOf(token)));
    } else this.#problems.extendRun('words', token);
  }

  #readAfterResult(token: Scanned): void {
    this.#frame.overrun ??= { first: spanOf(token), end: token.end };
    this.#frame.overrun.end = token.end;
    if (token.kind === 'open') this.#push(token, 'silent');
  }

  #open(token: Scanned): void {
    this.#dropNumber();
    const isWithoutMove = this.#frame.line.moves.length === 0;
    this.#push(token, isWithoutMove ? 'left-out' : 'kept');
  }

  #push(token: Scanned, fate: Frame['fate']): void {
    this.#frame = { line: openLine(token.end), opening: spanOf(token), fate };
    this.#stack.push(this.#frame);
  }

  #close(token: Scanned): void {
    this.#dropNumber();
    this.#pop(spanOf(token));
  }

  /** Ends the innermost variation; `closing` is its `)`, or empty where there is none. */
  #pop(closing: Span): void {
    const { line, opening, fate } = this.#frame;
    this.#reportOverrun();
    this.#stack.pop();
    this.#frame = this.#stack.at(-1) ?? this.root;
    if (opening === undefined) return;
    const span = { start: opening.start, end: closing.end };
    if (this.#frame.overrun) this.#frame.overrun.end = closing.end;
    // A ( within a variation that is left out says nothing new.
    if (fate === 'left-out' && this.#frame.fate === 'kept') {
      this.#problems.report(problems.variationWithoutMove(opening, span));
    }
    if (fate !== 'kept') return;
    line.span.end = closing.start;
    if (line.moves.length > 0) {
      this.#frame.line.moves.at(-1)?.after.push({ type: 'variation', line, span });
      return;
    }
    this.#problems.report(problems.variationEmpty(span));
    for (const comment of line.before) addComment(this.#frame, comment);
  }

  #dropNumber(): void {
    if (this.#number === undefined) return;
    this.#problems.report(problems.numberWithoutMove(this.#number.span, this.#number.text));
    this.#number = undefined;
  }

  #tokenOf(token: Scanned): Token {
    return { text: this.#text.slice(token.start, token.end), span: spanOf(token) };
  }
}
