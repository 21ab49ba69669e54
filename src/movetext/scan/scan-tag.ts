import type { Span, Tag } from '../types.ts';
import { isBlank, isDigit, isLetter, lineEnd } from './characters.ts';
import { isSpace } from './scan-words.ts';

export interface ScannedTag {
  readonly end: number;
  readonly tag: Tag;
  /** The stretch that breaks the form of a tag pair, if one does; the tag is what was probably meant. */
  readonly broken?: Span;
}

/**
 * The tag pair `[Name "value"]` that begins at `at` (PGN standard, 8.1.1), if what stands there is
 * meant as one: a bracket, a name and a quote, also on lines of their own. A value stays on its line. Where its end is
 * broken, by bare quotes within or by a missing quote or bracket, the rest of the line is taken.
 */
export function scanTag(text: string, at: number): ScannedTag | undefined {
  const nameStart = skipSpace(text, at + 1);
  let nameEnd = nameStart;
  while (isNameCharacter(text.charCodeAt(nameEnd))) nameEnd++;
  const quote = skipSpace(text, nameEnd);
  if (nameEnd === nameStart || text.charCodeAt(quote) !== 34) return undefined;

  const name = text.slice(nameStart, nameEnd);
  const close = closingQuote(text, quote + 1);
  if (close !== undefined) {
    const bracket = skipSpace(text, close + 1);
    if (text.charCodeAt(bracket) === 93) {
      const end = bracket + 1;
      return { end, tag: makeTag(text, name, at, quote + 1, close, end) };
    }
  }
  return scanBroken(text, name, at, quote + 1);
}

function scanBroken(text: string, name: string, at: number, valueStart: number): ScannedTag {
  let end = lineEnd(text, valueStart);
  while (end > valueStart && isBlank(text.charCodeAt(end - 1))) end--;
  let valueEnd = end;
  if (valueEnd > valueStart && text.charCodeAt(valueEnd - 1) === 93) valueEnd--;
  while (valueEnd > valueStart && isBlank(text.charCodeAt(valueEnd - 1))) valueEnd--;
  if (valueEnd > valueStart && text.charCodeAt(valueEnd - 1) === 34) valueEnd--;
  const tag = makeTag(text, name, at, valueStart, valueEnd, end);
  return { end, tag, broken: { start: at, end } };
}

function makeTag(
  text: string,
  name: string,
  start: number,
  valueStart: number,
  valueEnd: number,
  end: number,
): Tag {
  const value = text.slice(valueStart, valueEnd);
  return {
    name,
    value: value.includes('\\') ? value.replace(/\\(["\\])/g, '$1') : value,
    span: { start, end },
    valueSpan: { start: valueStart, end: valueEnd },
  };
}

/** The offset of the quote that ends the value, on the same line. */
function closingQuote(text: string, from: number): number | undefined {
  for (let at = from; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 34) return at;
    if (code === 10 || code === 13) return undefined;
    const next = text.charCodeAt(at + 1);
    if (code === 92 && (next === 34 || next === 92)) at++;
  }
  return undefined;
}

function skipSpace(text: string, from: number): number {
  let at = from;
  while (isSpace(text.charCodeAt(at))) at++;
  return at;
}

function isNameCharacter(code: number): boolean {
  return isLetter(code) || isDigit(code) || code === 95;
}
