import { isMoveSuffix } from './glyphs.ts';
import * as problems from './problems.ts';
import type { Scanned, Scanner } from './scanner.ts';
import type {
  Comment,
  Glyph,
  Movetext,
  MovetextProblem,
  Span,
  Tag,
  Token,
  Variation,
  WrittenNumber,
} from './types.ts';

interface MoveDraft {
  number?: WrittenNumber;
  san: Token;
  glyphs: Glyph[];
  after: (Comment | Variation)[];
}

interface LineDraft {
  before: Comment[];
  moves: MoveDraft[];
  result?: Token;
  span: { start: number; end: number };
}

/** A line that is being read: the main line, or a variation whose `)` has not come yet. */
interface Frame {
  readonly line: LineDraft;
  /** The `(`; the main line has none. */
  readonly opening?: Span;
  /** What becomes of it: left out, and with `silent` also without reports from within. */
  readonly fate: 'kept' | 'left-out' | 'silent';
  /** The suffix that is written behind its last move. */
  suffix?: Glyph | undefined;
  /** Whether text after its result has been reported. */
  overrun: boolean;
}

/**
 * So many problems of a game are told; the others are counted. Where a text of another kind was pasted,
 * each word of it is one.
 */
const mostProblems = 1000;

/**
 * So many moves, comments, brackets and glyphs may a game of an archive have: each takes some hundred
 * bytes of memory. A tree of a whole opening in one game has some ten thousand.
 */
const mostTokens = 250_000;

/**
 * Reads one game or line. Nesting is held on a stack of its own, so that its depth is limited by
 * memory only. In an archive the game ends where the next one begins.
 */
export function parseGame(text: string, scanner: Scanner, archive: boolean): Movetext {
  const tags: Tag[] = [];
  const tagNames = new Set<string>();
  const found: MovetextProblem[] = [];
  let untold = 0;
  let tokens = 0;
  const root: Frame = { line: makeLine(scanner.peek().start), fate: 'kept', overrun: false };
  const stack = [root];
  let frame = root;
  /** A move number whose move has not come yet. */
  let number: WrittenNumber | undefined;
  /** A run of words, or of tags, that is reported as one. */
  let run: { kind: 'words' | 'tag'; start: number; end: number } | undefined;
  /** Whether the tag section is over. */
  let started = false;
  let begun = false;
  let lastEnd = root.line.span.start;

  for (let token = scanner.peek(); token.kind !== 'end'; token = scanner.peek()) {
    if (archive && beginsNextGame(token)) break;
    scanner.take();
    tokens++;
    if (archive && tokens > mostTokens) {
      lastEnd = token.end;
      continue;
    }
    if (endsRun(token)) reportRun();
    if (token.kind === 'tag' && !started) readTag(token);
    else {
      if (!begun) root.line.span = { start: token.start, end: token.end };
      begun = true;
      read(token);
      lastEnd = token.end;
    }
  }
  if (archive && tokens > mostTokens) {
    const span = { start: root.line.span.start, end: lastEnd };
    return { tags, line: { before: [], moves: [], span }, problems: [], tooLong: true };
  }
  finish();
  found.sort((a, b) => a.span.start - b.span.start);
  return { tags, line: root.line, problems: found, ...(untold > 0 && { untold }) };

  function report(problem: MovetextProblem): void {
    if (found.length < mostProblems) found.push(problem);
    else untold++;
  }

  function beginsNextGame(token: Scanned): boolean {
    if (token.breaks === 0) return false;
    if (token.kind === 'tag') {
      return started || (token.breaks > 1 && tagNames.has(token.scanned.tag.name));
    }
    if (frame !== root || root.line.result === undefined) return false;
    if (token.kind === 'comment') return token.breaks > 1;
    return token.kind === 'number' && token.value === 1;
  }

  function readTag(token: Scanned & { kind: 'tag' }): void {
    const { tag, broken } = token.scanned;
    tags.push(tag);
    tagNames.add(tag.name);
    if (broken !== undefined) report(problems.tagUnreadable(broken));
    if (!begun) root.line.span = { start: token.end, end: token.end };
  }

  function read(token: Scanned): void {
    if (token.kind !== 'comment' && token.kind !== 'words') started = true;
    const { result } = frame.line;
    if (token.kind === 'close' && frame !== root) closeVariation(token);
    else if (frame.fate === 'silent') readSilently(token);
    else if (token.kind === 'comment') readComment(token);
    else if (result === undefined) readInLine(token);
    else readAfterResult(token, result);
  }

  function readSilently(token: Scanned): void {
    if (token.kind === 'open') push(token, 'silent');
  }

  function readInLine(token: Scanned): void {
    switch (token.kind) {
      case 'number':
        dropNumber();
        number = {
          text: text.slice(token.start, token.end),
          span: makeSpan(token),
          value: token.value,
          dots: token.dots,
        };
        return;
      case 'move':
        readMove(token);
        return;
      case 'glyph':
        readGlyph(token, token.nag);
        return;
      case 'novelty':
        if (frame.line.moves.length > 0 && number === undefined) readGlyph(token, 146);
        else readWords(token);
        return;
      case 'open':
        openVariation(token);
        return;
      case 'close':
        report(problems.variationUnopened(makeSpan(token)));
        return;
      case 'result':
        dropNumber();
        frame.line.result = { text: token.result, span: makeSpan(token) };
        return;
      case 'words':
        readWords(token);
        return;
      case 'tag':
        dropNumber();
        extendRun('tag', token);
        return;
    }
  }

  function readMove(token: Scanned): void {
    const move: MoveDraft = { san: makeToken(token), glyphs: [], after: [] };
    if (number !== undefined) move.number = number;
    frame.line.moves.push(move);
    frame.suffix = undefined;
    number = undefined;
  }

  function readComment(token: Scanned & { kind: 'comment' }): void {
    const span = {
      start: token.start + 1,
      end: token.form === 'brace' && token.closed ? token.end - 1 : token.end,
    };
    addComment(frame, {
      type: 'comment',
      form: token.form,
      text: text.slice(span.start, span.end),
      span,
      outer: makeSpan(token),
    });
    if (!token.closed) {
      report(problems.commentUnclosed({ start: token.start, end: token.start + 1 }));
    }
  }

  function readGlyph(token: Scanned, nag: number | undefined): void {
    const glyph = makeToken(token);
    const move = frame.line.moves.at(-1);
    if (nag === undefined) {
      report(problems.glyphUnreadable(glyph.span, glyph.text));
    } else if (move === undefined || number !== undefined) {
      report(problems.glyphMisplaced(glyph.span, glyph.text));
    } else {
      const made = { text: glyph.text, span: glyph.span, nag };
      const first = isSuffix(nag, glyph.text) ? frame.suffix : undefined;
      if (first !== undefined) report(problems.suffixRepeated(glyph.span, glyph.text, first.text));
      else {
        move.glyphs.push(made);
        if (isSuffix(nag, glyph.text)) frame.suffix = made;
      }
    }
  }

  function readWords(token: Scanned): void {
    if (!started && text.charCodeAt(token.start) === 91) {
      report(problems.tagUnreadable(makeSpan(token)));
    } else extendRun('words', token);
  }

  function readAfterResult(token: Scanned, result: Token): void {
    if (!frame.overrun) {
      report(problems.textAfterResult(makeSpan(token), result.text));
    }
    frame.overrun = true;
    if (token.kind === 'open') push(token, 'silent');
  }

  function openVariation(token: Scanned): void {
    dropNumber();
    const isWithoutMove = frame.line.moves.length === 0;
    // A ( within a variation that was reported for this reason says nothing new.
    if (isWithoutMove && frame.fate === 'kept') {
      report(problems.variationWithoutMove(makeSpan(token)));
    }
    push(token, isWithoutMove ? 'left-out' : 'kept');
  }

  function push(token: Scanned, fate: Frame['fate']): void {
    frame = { line: makeLine(token.end), opening: makeSpan(token), fate, overrun: false };
    stack.push(frame);
  }

  function closeVariation(token: Scanned): void {
    dropNumber();
    pop({ start: token.start, end: token.end });
  }

  /** Ends the innermost variation; `closing` is its `)`, or empty where there is none. */
  function pop(closing: Span): void {
    const { line, opening, fate } = frame;
    stack.pop();
    frame = stack.at(-1) ?? root;
    if (opening === undefined || fate !== 'kept') return;
    line.span.end = closing.start;
    const span = { start: opening.start, end: closing.end };
    if (line.moves.length > 0) {
      frame.line.moves.at(-1)?.after.push({ type: 'variation', line, span });
      return;
    }
    report(problems.variationEmpty(span));
    for (const comment of line.before) addComment(frame, comment);
  }

  function finish(): void {
    reportRun();
    dropNumber();
    while (frame.opening !== undefined) {
      if (frame.fate !== 'silent') report(problems.variationUnclosed(frame.opening));
      // A result at the end of an unclosed variation is that of the game.
      if (frame.line.result !== undefined && frame.fate !== 'silent') {
        root.line.result ??= frame.line.result;
        delete frame.line.result;
      }
      pop({ start: lastEnd, end: lastEnd });
    }
    root.line.span.end = Math.max(lastEnd, root.line.span.start);
  }

  function dropNumber(): void {
    if (number === undefined) return;
    report(problems.numberWithoutMove(number.span, number.text));
    number = undefined;
  }

  function extendRun(kind: 'words' | 'tag', token: Scanned): void {
    if (run === undefined) run = { kind, start: token.start, end: token.end };
    else run.end = token.end;
  }

  /** Words are reported a line at a time, tags together. */
  function endsRun(token: Scanned): boolean {
    return token.kind !== run?.kind || (token.kind === 'words' && token.breaks > 0);
  }

  function reportRun(): void {
    if (run === undefined) return;
    const span = { start: run.start, end: run.end };
    if (run.kind === 'tag') report(problems.tagMisplaced(span));
    else report(problems.textUnreadable(span, text.slice(span.start, span.end)));
    run = undefined;
  }

  function makeToken(token: Scanned): Token {
    return { text: text.slice(token.start, token.end), span: makeSpan(token) };
  }
}

function addComment(frame: Frame, comment: Comment): void {
  (frame.line.moves.at(-1)?.after ?? frame.line.before).push(comment);
}

function isSuffix(nag: number, written: string): boolean {
  return isMoveSuffix(nag) && !written.startsWith('$');
}

function makeLine(start: number): LineDraft {
  return { before: [], moves: [], span: { start, end: start } };
}

function makeSpan(token: Scanned): Span {
  return { start: token.start, end: token.end };
}
