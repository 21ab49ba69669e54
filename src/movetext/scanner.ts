import {
  cr,
  isBlank,
  isDash,
  isDigit,
  isFigurine,
  isLetter,
  isLineBreak,
  isLineStart,
  isWordCharacter,
  lf,
  lineEnd,
} from './characters.ts';
import { scanGlyph } from './scan-glyph.ts';
import { scanMove, scanPlainMove, scanWord } from './scan-move.ts';
import { type ScannedTag, scanTag } from './scan-tag.ts';
import type { Span } from './types.ts';

interface Placed {
  readonly start: number;
  readonly end: number;
  /** Line breaks between this token and the one before; two mean a blank line. */
  readonly breaks: number;
}

/** A token of movetext. `novelty` is a bare `N`, `words` is what can be none of the others. */
export type Scanned =
  | (Placed & { readonly kind: 'open' | 'close' | 'move' | 'novelty' | 'words' | 'end' })
  | (Placed & {
      readonly kind: 'comment';
      readonly form: 'brace' | 'line';
      readonly closed: boolean;
    })
  | (Placed & { readonly kind: 'number'; readonly value: number; readonly dots: number })
  | (Placed & { readonly kind: 'glyph'; readonly nag: number | undefined })
  | (Placed & { readonly kind: 'result'; readonly result: string })
  | (Placed & { readonly kind: 'tag'; readonly scanned: ScannedTag });

/** Reads the tokens of a text one after another; `peek` shows the next, `take` passes it. */
export interface Scanner {
  readonly peek: () => Scanned;
  readonly take: () => Scanned;
}

const resultForm = /(?:1[-‐‑–−]0|0[-‐‑–−]1|1\/2[-‐‑–−]1\/2|½[-‐‑–−]½|1\/2|½)(?![\p{L}\p{N}/])/uy;
/** A short bracketed stretch within a line, read as one. */
const bracketed = /\[[^[\]\r\n]{0,500}\]/y;

/**
 * A scanner of `text`, or of the stretch of it that a game of a file is; what follows that begins a
 * line. Every character is read a bounded number of times.
 */
export function createScanner(
  text: string,
  { start: from, end: limit }: Span = { start: 0, end: text.length },
): Scanner {
  let at = from;
  let breaks = 0;
  let ahead: Scanned | undefined;
  // Where the next `}` is: found once, kept until passed.
  let brace = -1;

  function skipSpace(): void {
    breaks = at === from ? 2 : 0;
    for (;;) {
      const code = text.charCodeAt(at);
      if (isLineBreak(code)) {
        at += code === cr && text.charCodeAt(at + 1) === lf ? 2 : 1;
        breaks++;
      } else if (isBlank(code)) at++;
      else if (code === 37 && isLineStart(text, at)) at = lineEnd(text, at);
      else return;
    }
  }

  function peek(): Scanned {
    if (ahead === undefined) {
      skipSpace();
      ahead = read(at);
      at = ahead.end;
    }
    return ahead;
  }

  function take(): Scanned {
    const token = peek();
    if (token.kind !== 'end') ahead = undefined;
    return token;
  }

  function read(start: number): Scanned {
    const code = text.charCodeAt(start);
    if (start >= limit) return { kind: 'end', start: limit, end: limit, breaks };
    if (code === 123) return readBrace(start);
    if (code === 59) {
      const end = lineEnd(text, start);
      return { kind: 'comment', form: 'line', closed: true, start, end, breaks };
    }
    if (code === 40) return { kind: 'open', start, end: start + 1, breaks };
    if (code === 41) return { kind: 'close', start, end: start + 1, breaks };
    if (code === 42) return { kind: 'result', result: '*', start, end: start + 1, breaks };
    if (code === 91) return readBracket(start);
    const plain = scanPlainMove(text, start);
    if (plain !== undefined) return { kind: 'move', start, end: plain, breaks };
    const glyph = scanGlyph(text, start);
    if (glyph) return { kind: 'glyph', nag: glyph.nag, start, end: glyph.end, breaks };
    if (isDigit(code) || code === 0xbd) return readDigits(start);
    return readWord(start);
  }

  function readBrace(start: number): Scanned {
    if (brace < start) {
      const found = text.indexOf('}', start);
      brace = found === -1 ? text.length : found;
    }
    const closed = brace < limit;
    const end = closed ? brace + 1 : inkEnd(start);
    return { kind: 'comment', form: 'brace', closed, start, end, breaks };
  }

  /** The end of what stands before the end, behind which is only space. */
  function inkEnd(start: number): number {
    let end = limit;
    while (end > start && isSpace(text.charCodeAt(end - 1))) end--;
    return end;
  }

  function readBracket(start: number): Scanned {
    const scanned = scanTag(text, start);
    if (scanned) return { kind: 'tag', scanned, start, end: scanned.end, breaks };
    bracketed.lastIndex = start;
    const end = bracketed.test(text) ? bracketed.lastIndex : start + 1;
    return { kind: 'words', start, end, breaks };
  }

  function readDigits(start: number): Scanned {
    const next = text.charCodeAt(start + 1);
    resultForm.lastIndex = start;
    if (next !== 46 && !isDigit(next) && resultForm.test(text)) {
      const end = resultForm.lastIndex;
      return { kind: 'result', result: nameResult(text.slice(start, end)), start, end, breaks };
    }
    let end = start;
    while (isDigit(text.charCodeAt(end))) end++;
    const code = text.charCodeAt(end);
    if (end === start || isDash(code) || code === 47) {
      const move = scanMove(text, start);
      if (move !== undefined) return { kind: 'move', start, end: move, breaks };
      return { kind: 'words', start, end: wordsEnd(start), breaks };
    }
    if ((isLetter(code) || isFigurine(code)) && scanMove(text, end) === undefined) {
      return { kind: 'words', start, end: wordsEnd(start), breaks };
    }
    const written = text.slice(start, end);
    const periods = readPeriods(end);
    // No move has such a number: it is castling without its dashes.
    const castling =
      periods.dots === 0 && /^000?$/.test(written) ? scanMove(text, start) : undefined;
    if (castling !== undefined) return { kind: 'move', start, end: castling, breaks };
    const value = Math.min(Number(written), Number.MAX_SAFE_INTEGER);
    return { kind: 'number', value, dots: periods.dots, start, end: periods.end, breaks };
  }

  /** The periods after a number, which may stand apart: `1.`, `1...`, `1. ...`, `1 .`, `1…`. */
  function readPeriods(from: number): { end: number; dots: number } {
    let end = from;
    let dots = 0;
    for (let ahead = from; ; ahead++) {
      const code = text.charCodeAt(ahead);
      if (code === 46) dots++;
      else if (code === 0x2026) dots += 3;
      else if (isBlank(code) || isLineBreak(code)) continue;
      else return { end, dots };
      end = ahead + 1;
    }
  }

  function readWord(start: number): Scanned {
    const code = text.charCodeAt(start);
    if (isWordCharacter(code) || isDash(code)) {
      const move = scanMove(text, start);
      if (move !== undefined) return { kind: 'move', start, end: move, breaks };
      if (text.charCodeAt(start) === 78 && scanWord(text, start) === start + 1) {
        if (standsAlone(start + 1)) return { kind: 'novelty', start, end: start + 1, breaks };
      }
    }
    return { kind: 'words', start, end: wordsEnd(start), breaks };
  }

  function standsAlone(end: number): boolean {
    const code = text.charCodeAt(end);
    return end >= limit || isSpaceOrBracket(code);
  }

  /** Words end at a space or bracket; a run of other characters also where a word may begin. */
  function wordsEnd(start: number): number {
    const isWord = isWordCharacter(text.charCodeAt(start));
    let end = start + 1;
    while (end < limit) {
      const code = text.charCodeAt(end);
      if (isSpaceOrBracket(code)) break;
      if (!isWord && (isWordCharacter(code) || code === 36 || code === 42 || code === 91)) break;
      end++;
    }
    return end;
  }

  return { peek, take };
}

function isSpace(code: number): boolean {
  return isBlank(code) || isLineBreak(code);
}

function isSpaceOrBracket(code: number): boolean {
  return isSpace(code) || code === 40 || code === 41 || code === 59 || code === 123 || code === 125;
}

/** The result in the spelling of the PGN standard. */
function nameResult(written: string): string {
  const draw = written.startsWith('½') || written.startsWith('1/2');
  return draw ? '1/2-1/2' : `${written.charAt(0)}-${written.charAt(2)}`;
}
