import type { Span } from '../types.ts';
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
import { scanNearMove } from './scan-near-move.ts';
import { scanPeriods } from './scan-periods.ts';
import { scanResult } from './scan-result.ts';
import { type ScannedTag, scanTag } from './scan-tag.ts';
import { isSpace, isSpaceOrBracket, wordsEnd } from './scan-words.ts';

interface Placed {
  readonly start: number;
  readonly end: number;
  /** Line breaks between this token and the one before; two mean a blank line. */
  readonly breaks: number;
}

/**
 * A token of movetext. `novelty` is a bare `N`, `near-move` a word that is one sign away from a move, `words`
 * what can be none of the others.
 */
export type Scanned =
  | (Placed & { readonly kind: 'open' | 'close' | 'move' | 'novelty' | 'words' | 'end' })
  | (Placed & {
      readonly kind: 'comment';
      readonly form: 'brace' | 'line';
      readonly closed: boolean;
    })
  | (Placed & { readonly kind: 'near-move'; readonly sure: boolean })
  | (Placed & { readonly kind: 'number'; readonly value: number; readonly dots: number })
  | (Placed & { readonly kind: 'glyph'; readonly nag: number | undefined })
  | (Placed & { readonly kind: 'result'; readonly result: string })
  | (Placed & { readonly kind: 'tag'; readonly scanned: ScannedTag });

/** So many lines that are passed over are remembered. */
const mostEscaped = 1000;

/** A short bracketed stretch within a line, read as one. */
const bracketed = /\[[^[\]\r\n]{0,500}\]/y;

/**
 * Reads the tokens of a text one after another, or those of the stretch of it that a game of a file is;
 * what follows that begins a line. Every character is read a bounded number of times.
 */
export class Scanner {
  readonly #text: string;
  readonly #start: number;
  readonly #limit: number;
  #at: number;
  #breaks = 0;
  #ahead: Scanned | undefined;
  /** Where the next `}` is: found once, kept until passed. */
  #brace = -1;
  /** Lines that begin with `%`, which were passed over. */
  readonly escaped: Span[] = [];

  constructor(text: string, { start, end }: Span = { start: 0, end: text.length }) {
    this.#text = text;
    this.#start = start;
    this.#limit = end;
    this.#at = start;
  }

  /** The next token. */
  peek(): Scanned {
    if (this.#ahead === undefined) {
      this.#skipSpace();
      this.#ahead = this.#read(this.#at);
      this.#at = this.#ahead.end;
    }
    return this.#ahead;
  }

  /** The same, and passes it. */
  take(): Scanned {
    const token = this.peek();
    if (token.kind !== 'end') this.#ahead = undefined;
    return token;
  }

  /**
   * The plain move that comes next, and passes it and its number: what most tokens of an archive are, without a token
   * for each. Undefined where something else comes; `take` tells what.
   */
  takePlainMove(): string | undefined {
    if (this.#ahead !== undefined) return undefined;
    this.#skipSpace();
    const text = this.#text;
    let end = this.#at;
    while (isDigit(text.charCodeAt(end))) end++;
    if (end > this.#at && text.charCodeAt(end) === 46) {
      this.#at = scanPeriods(text, end).end;
      this.#skipSpace();
    }
    const start = this.#at;
    const move = start < this.#limit ? scanPlainMove(text, start) : undefined;
    if (move === undefined) return undefined;
    this.#at = move;
    return text.slice(start, move);
  }

  #skipSpace(): void {
    const text = this.#text;
    let at = this.#at;
    let breaks = at === this.#start ? 2 : 0;
    for (;;) {
      const code = text.charCodeAt(at);
      if (isLineBreak(code)) {
        at += code === cr && text.charCodeAt(at + 1) === lf ? 2 : 1;
        breaks++;
      } else if (isBlank(code)) at++;
      else if (code === 37 && at < this.#limit && isLineStart(text, at)) {
        const end = lineEnd(text, at);
        if (this.escaped.length < mostEscaped) this.escaped.push({ start: at, end });
        at = end;
      } else break;
    }
    this.#at = at;
    this.#breaks = breaks;
  }

  #read(start: number): Scanned {
    const text = this.#text;
    const breaks = this.#breaks;
    const limit = this.#limit;
    if (start >= limit) return { kind: 'end', start: limit, end: limit, breaks };
    const code = text.charCodeAt(start);
    if (code === 123) return this.#readBrace(start);
    if (code === 59) {
      const end = lineEnd(text, start);
      return { kind: 'comment', form: 'line', closed: true, start, end, breaks };
    }
    if (code === 40) return { kind: 'open', start, end: start + 1, breaks };
    if (code === 41) return { kind: 'close', start, end: start + 1, breaks };
    if (code === 42) return { kind: 'result', result: '*', start, end: start + 1, breaks };
    if (code === 91) return this.#readBracket(start);
    const plain = scanPlainMove(text, start);
    if (plain !== undefined) return { kind: 'move', start, end: plain, breaks };
    const glyph = scanGlyph(text, start);
    if (glyph) return { kind: 'glyph', nag: glyph.nag, start, end: glyph.end, breaks };
    if (isDigit(code) || code === 0xbd) return this.#readDigits(start);
    return this.#readWord(start);
  }

  #readBrace(start: number): Scanned {
    if (this.#brace < start) {
      const found = this.#text.indexOf('}', start);
      this.#brace = found === -1 ? this.#text.length : found;
    }
    const closed = this.#brace < this.#limit;
    const end = closed ? this.#brace + 1 : this.#inkEnd(start);
    return { kind: 'comment', form: 'brace', closed, start, end, breaks: this.#breaks };
  }

  /** The end of what stands before the end, behind which is only space. */
  #inkEnd(start: number): number {
    let end = this.#limit;
    while (end > start && isSpace(this.#text.charCodeAt(end - 1))) end--;
    return end;
  }

  #readBracket(start: number): Scanned {
    const scanned = scanTag(this.#text, start);
    const breaks = this.#breaks;
    if (scanned) return { kind: 'tag', scanned, start, end: scanned.end, breaks };
    bracketed.lastIndex = start;
    const end = bracketed.test(this.#text) ? bracketed.lastIndex : start + 1;
    return { kind: 'words', start, end, breaks };
  }

  #readDigits(start: number): Scanned {
    const text = this.#text;
    const breaks = this.#breaks;
    const next = text.charCodeAt(start + 1);
    const result = next === 46 || isDigit(next) ? undefined : scanResult(text, start);
    if (result !== undefined) return { kind: 'result', start, breaks, ...result };
    let end = start;
    while (isDigit(text.charCodeAt(end))) end++;
    const code = text.charCodeAt(end);
    if (end === start || isDash(code) || code === 47) {
      const move = scanMove(text, start);
      return move === undefined ? this.#words(start) : { kind: 'move', start, end: move, breaks };
    }
    if ((isLetter(code) || isFigurine(code)) && scanMove(text, end) === undefined) {
      return this.#words(start);
    }
    return this.#readNumber(start, end);
  }

  #readNumber(start: number, digitsEnd: number): Scanned {
    const text = this.#text;
    const { dots, end } = scanPeriods(text, digitsEnd);
    const breaks = this.#breaks;
    // No move has such a number: it is castling without its dashes.
    const mayCastle = dots === 0 && /^000?$/.test(text.slice(start, digitsEnd));
    const castling = mayCastle ? scanMove(text, start) : undefined;
    if (castling !== undefined) return { kind: 'move', start, end: castling, breaks };
    let value = 0;
    for (let at = start; at < digitsEnd; at++) value = 10 * value + text.charCodeAt(at) - 48;
    value = Math.min(value, Number.MAX_SAFE_INTEGER);
    return { kind: 'number', value, dots, start, end, breaks };
  }

  #readWord(start: number): Scanned {
    const text = this.#text;
    const breaks = this.#breaks;
    const code = text.charCodeAt(start);
    if (isWordCharacter(code) || isDash(code)) {
      const move = scanMove(text, start);
      if (move !== undefined) return { kind: 'move', start, end: move, breaks };
      const end = start + 1;
      const isNovelty = code === 78 && scanWord(text, start) === end && this.#standsAlone(end);
      if (isNovelty) return { kind: 'novelty', start, end, breaks };
      const near = scanNearMove(text, start, this.#limit);
      if (near) return { kind: 'near-move', start, breaks, ...near };
    }
    return this.#words(start);
  }

  #standsAlone(end: number): boolean {
    return end >= this.#limit || isSpaceOrBracket(this.#text.charCodeAt(end));
  }

  #words(start: number): Scanned {
    const end = wordsEnd(this.#text, start, this.#limit);
    return { kind: 'words', start, end, breaks: this.#breaks };
  }
}
