import { largestNag } from '../glyphs.ts';
import { isDash, isDigit, isLetter } from './characters.ts';

export interface ScannedGlyph {
  readonly end: number;
  /** Missing where what stands there is no glyph, such as `!!!` or `$999`. */
  readonly nag?: number;
}

const suffixNags = new Map([
  ['!', 1],
  ['?', 2],
  ['!!', 3],
  ['??', 4],
  ['!?', 5],
  ['?!', 6],
  ['‼', 3],
  ['⁇', 4],
  ['⁉', 5],
  ['⁈', 6],
]);

/**
 * The printed signs that are read, a hyphen standing for any dash. Signs that introduce other
 * moves, such as that for "with the idea", are not among them: those moves are not part of the
 * line. Where one sign serves both sides, it is read as White's number, the even one.
 */
const signs: readonly (readonly [sign: string, nag: number])[] = [
  ['+-', 18],
  ['±', 16],
  ['+/-', 16],
  ['⩲', 14],
  ['+=', 14],
  ['+/=', 14],
  ['=', 10],
  ['⩱', 15],
  ['=+', 15],
  ['=/+', 15],
  ['∓', 17],
  ['-/+', 17],
  ['-+', 19],
  ['∞', 13],
  ['=∞', 44],
  ['=/∞', 44],
  ['⯹', 44],
  ['□', 7],
  ['⨀', 22],
  ['⊙', 22],
  ['○', 26],
  ['⟳', 32],
  ['↑', 36],
  ['→', 40],
  ['⇆', 132],
  ['⇄', 132],
  ['⊕', 138],
  ['⨁', 138],
];

/** By first character, the longest first. */
const signsByStart = new Map<number, (readonly [sign: string, nag: number])[]>();
for (const entry of signs) {
  const start = entry[0].charCodeAt(0);
  const list = signsByStart.get(start) ?? [];
  list.push(entry);
  list.sort((a, b) => b[0].length - a[0].length);
  signsByStart.set(start, list);
}

/** The `$n`, suffix or printed sign at `at`, if one of these begins there. */
export function scanGlyph(text: string, at: number): ScannedGlyph | undefined {
  const code = text.charCodeAt(at);
  if (code === 36) return scanNumbered(text, at);
  if (isSuffixCharacter(code)) return scanSuffix(text, at);
  return scanSign(text, at);
}

function scanNumbered(text: string, at: number): ScannedGlyph {
  let end = at + 1;
  while (isDigit(text.charCodeAt(end))) end++;
  const nag = Number(text.slice(at + 1, end));
  return end > at + 1 && nag <= largestNag ? { end, nag } : { end };
}

function scanSuffix(text: string, at: number): ScannedGlyph {
  let end = at + 1;
  while (isSuffixCharacter(text.charCodeAt(end))) end++;
  const nag = end - at > 2 ? undefined : suffixNags.get(text.slice(at, end));
  return nag === undefined ? { end } : { end, nag };
}

function scanSign(text: string, at: number): ScannedGlyph | undefined {
  const first = text.charCodeAt(at);
  for (const [sign, nag] of signsByStart.get(isDash(first) ? 45 : first) ?? []) {
    const end = at + sign.length;
    if (!matchesSign(text, at, sign)) continue;
    // `=Q` is a promotion that lost its move, not an assessment.
    if (sign === '=' && isLetter(text.charCodeAt(end))) continue;
    return { end, nag };
  }
  return undefined;
}

function matchesSign(text: string, at: number, sign: string): boolean {
  for (let index = 0; index < sign.length; index++) {
    const wanted = sign.charCodeAt(index);
    const found = text.charCodeAt(at + index);
    if (found !== wanted && !(wanted === 45 && isDash(found))) return false;
  }
  return true;
}

function isSuffixCharacter(code: number): boolean {
  return code === 33 || code === 63 || code === 0x203c || (code >= 0x2047 && code <= 0x2049);
}
