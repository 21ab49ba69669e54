/** Classes of UTF-16 units. A unit past the end of the text (NaN) belongs to none of them. */

export const lf = 10;
export const cr = 13;

export function isLineBreak(code: number): boolean {
  return code === lf || code === cr;
}

/**
 * Space of any kind but a line break: what the PGN standard allows, and what copies from web
 * pages and word processors bring along (no-break and zero-width spaces, byte order marks).
 */
export function isBlank(code: number): boolean {
  if (code < 0x80) return code === 32 || code === 9 || code === 11 || code === 12;
  return (
    code === 0xa0 ||
    code === 0x85 ||
    code === 0x1680 ||
    (code >= 0x2000 && code <= 0x200d) ||
    code === 0x2028 ||
    code === 0x2029 ||
    code === 0x202f ||
    code === 0x205f ||
    code === 0x2060 ||
    code === 0x3000 ||
    code === 0xfeff
  );
}

export function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

/** A letter of any script: authors write the pieces in their own language. */
export function isLetter(code: number): boolean {
  if (code < 0x80) return (code >= 97 && code <= 122) || (code >= 65 && code <= 90);
  return code >= 0x80 && /\p{L}/u.test(String.fromCharCode(code));
}

/** `♔` to `♟`, and the variation selectors that may follow them. */
export function isFigurine(code: number): boolean {
  return (code >= 0x2654 && code <= 0x265f) || code === 0xfe0e || code === 0xfe0f;
}

/** What the words of movetext are made of. */
export function isWordCharacter(code: number): boolean {
  return isLetter(code) || isDigit(code) || isFigurine(code);
}

/** Hyphen, no-break hyphen, en dash and minus sign; the em dash belongs to prose. */
export function isDash(code: number): boolean {
  return code === 45 || code === 0x2010 || code === 0x2011 || code === 0x2013 || code === 0x2212;
}

/** The start of the line break at or after `from`, else the end of the text. */
export function lineEnd(text: string, from: number): number {
  let at = from;
  while (at < text.length && !isLineBreak(text.charCodeAt(at))) at++;
  return at;
}

/** Whether `at` is column 1: the start of the text, of a line, or just after a byte order mark. */
export function isLineStart(text: string, at: number): boolean {
  if (at === 0 || isLineBreak(text.charCodeAt(at - 1))) return true;
  return at === 1 && text.charCodeAt(0) === 0xfeff;
}
