import {
  isBlank,
  isDash,
  isDigit,
  isFigurine,
  isLetter,
  isLineBreak,
  isWordCharacter,
} from './characters.ts';
import { scanGlyph } from './scan-glyph.ts';

/** Castling with letters or zeros, Latin or Cyrillic, with any dash or none. */
const castling = /^[0OoОо](?:[-‐‑–−]?[0OoОо]){1,2}$/u;
/** Short pawn captures of printed games: `exd`, `ed`. */
const pawnCapture = /^(?:[a-h][x:×][a-h]|ab|b[ac]|c[bd]|d[ce]|e[df]|f[eg]|g[fh]|hg)$/u;
/** Captures that name no square: `Nxe`, `NxP`. */
const shortCapture = /^[\p{Lu}♔-♟](?:\uFE0E|\uFE0F)?[a-h]?[x:×-][a-hKQRBNP]?$/u;
/** A letter or two, then one digit: the heart of a square in any notation that uses letters. */
const square = /^(?:[\p{L}♔-♟:×‐‑–−-]|\uFE0E|\uFE0F){1,5}[1-9](?!\d)/u;
const longestMove = 14;

const bracketedPromotion = /=?\([\p{L}♔-♟]\uFE0E?\)/uy;
const enPassant = /[ \t\u00A0]{0,3}e\.?[ \t\u00A0]?p\b\.?/uy;

/**
 * The end of the move that begins at `at`, its check sign included, or `undefined` where what
 * stands there cannot be meant as a move. Spelling and legality are judged later: `0-0`, `e8Q`,
 * `Sf3`, `e2-e4`, `exd6 e.p.`, `♘f3` and the null moves `--` and `Z0` are all moves here.
 */
export function scanMove(text: string, at: number): number | undefined {
  if (isDash(text.charCodeAt(at))) {
    return isNullMove(text, at) ? at + 2 : undefined;
  }
  const bodyEnd = withoutEnPassant(text, scanWord(text, at));
  if (!isMoveLike(text, at, bodyEnd)) return undefined;
  let end = scanPromotion(text, bodyEnd);
  end = scanCheck(text, end);
  const afterEnPassant = scanEnPassant(text, at, bodyEnd, end);
  return afterEnPassant === undefined ? end : scanCheck(text, afterEnPassant);
}

/**
 * As `scanMove`, of a move in the plain SAN of the PGN standard (8.2.3) before a space, as nearly all
 * are; undefined for every other, whatever it is. It takes a tenth of the time.
 */
export function scanPlainMove(text: string, at: number): number | undefined {
  const first = text.charCodeAt(at);
  // It may be the number of a move.
  if (isDigit(first)) return undefined;
  let end = first === 79 ? castlingEnd(text, at) : squareEnd(text, at);
  if (end === undefined) return undefined;
  const sign = text.charCodeAt(end);
  if (sign === 43 || sign === 35) end++;
  const next = text.charCodeAt(end);
  if (isLineBreak(next) || Number.isNaN(next)) return end;
  if (next !== 32) return undefined;
  const after = text.charCodeAt(end + 1);
  // It could be the beginning of `exd6 e.p.`, which ends later.
  const mayGoOn = first >= 97 && (after === 101 || isBlank(after));
  return mayGoOn ? undefined : end;
}

function castlingEnd(text: string, at: number): number | undefined {
  if (!text.startsWith('O-O', at)) return undefined;
  return text.startsWith('-O', at + 3) ? at + 5 : at + 3;
}

/** The end of `[KQRBN]?[a-h]?[1-8]?x?[a-h][1-8](=[QRBN])?`. */
function squareEnd(text: string, at: number): number | undefined {
  let end = isPiece(text.charCodeAt(at)) ? at + 1 : at;
  if (isFile(text, end) && !isLastSquare(text, end)) end++;
  if (isRank(text, end)) end++;
  if (text.charCodeAt(end) === 120) end++;
  if (!(isFile(text, end) && isRank(text, end + 1))) return undefined;
  end += 2;
  if (text.charCodeAt(end) !== 61) return end;
  const promotion = text.charCodeAt(end + 1);
  return isPiece(promotion) && promotion !== 75 ? end + 2 : undefined;
}

/** Whether a file and a rank stand at `at`, and no other square or capture behind them. */
function isLastSquare(text: string, at: number): boolean {
  if (!isRank(text, at + 1)) return false;
  return !(isFile(text, at + 2) || text.charCodeAt(at + 2) === 120);
}

function isPiece(code: number): boolean {
  return code === 75 || code === 81 || code === 82 || code === 66 || code === 78;
}

function isFile(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return code >= 97 && code <= 104;
}

function isRank(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return code >= 49 && code <= 56;
}

/** The end of the run of letters, digits and figurines at `at`, joined by `-`, `=`, `/`, `:` or `×`. */
export function scanWord(text: string, at: number): number {
  let end = at;
  for (;;) {
    const code = text.charCodeAt(end);
    if (isWordCharacter(code)) end++;
    else if (end > at && isJoint(code, text.charCodeAt(end + 1))) end++;
    else return end;
  }
}

/** `=` and `/` join a promotion (`e8=Q`); before anything else they are an assessment. */
function isJoint(code: number, next: number): boolean {
  if (code === 61 || code === 47) return isLetter(next) || isFigurine(next);
  return (isDash(code) || code === 58 || code === 0xd7) && isWordCharacter(next);
}

function isMoveLike(text: string, at: number, end: number): boolean {
  if (end === at || end - at > longestMove) return false;
  const word = text.slice(at, end);
  if (castling.test(word)) return true;
  if (isDigit(word.charCodeAt(0))) return false;
  return (
    square.test(word) ||
    pawnCapture.test(word) ||
    shortCapture.test(word) ||
    word === 'Z0' ||
    word === 'z0'
  );
}

function isNullMove(text: string, at: number): boolean {
  if (!isDash(text.charCodeAt(at + 1))) return false;
  const next = text.charCodeAt(at + 2);
  return !isDash(next) && !isWordCharacter(next);
}

/** `(Q)` right after the last rank: a promotion in print. */
function scanPromotion(text: string, at: number): number {
  const rank = text.charCodeAt(at - 1);
  const next = text.charCodeAt(at);
  if ((rank !== 49 && rank !== 56) || (next !== 40 && next !== 61)) return at;
  bracketedPromotion.lastIndex = at;
  return bracketedPromotion.test(text) ? bracketedPromotion.lastIndex : at;
}

/** Where the `e` of a word belongs to `e.p.`, written without a space: `exd6e.p.`. */
function withoutEnPassant(text: string, end: number): number {
  const rank = text.charAt(end - 2);
  if ((rank !== '3' && rank !== '6') || text.charAt(end) !== '.') return end;
  enPassant.lastIndex = end - 1;
  return enPassant.test(text) ? end - 1 : end;
}

/** `e.p.` after the capture of a pawn on the third or sixth rank. */
function scanEnPassant(text: string, at: number, bodyEnd: number, end: number): number | undefined {
  const file = text.charCodeAt(at);
  const rank = text.charCodeAt(bodyEnd - 1);
  if (file < 97 || file > 104 || (rank !== 51 && rank !== 54)) return undefined;
  enPassant.lastIndex = end;
  return enPassant.test(text) ? enPassant.lastIndex : undefined;
}

/**
 * Where the check sign at `at` ends. A `+` may also begin an assessment: of the ways to read the
 * run of signs, that with the fewest check signs which leaves nothing unread is taken. So `Nf3+-`
 * is a move and `+-`, `Nf3+=` a move and `+=`, `Qh5+-+` a check and `-+`, `Qh5++-` a check and
 * `+-`. A check and `=` must be parted by a space: `Qh5+ =`.
 */
function scanCheck(text: string, at: number): number {
  let most = at;
  while (most < at + 2 && isCheckSign(text.charCodeAt(most))) most++;
  for (let end = at; end <= most; end++) {
    if (areGlyphs(text, end)) return end;
  }
  return Math.min(most, at + 1);
}

/** Whether the run of signs at `at` is made of glyphs and nothing else; an empty run is. */
function areGlyphs(text: string, at: number): boolean {
  let end = at;
  for (let glyph = scanGlyph(text, end); glyph; glyph = scanGlyph(text, end)) end = glyph.end;
  const code = text.charCodeAt(end);
  return !(isCheckSign(code) || isDash(code) || code === 61 || code === 47);
}

/** `+`, `#`, and the daggers of older books. */
function isCheckSign(code: number): boolean {
  return code === 43 || code === 35 || code === 0x2020 || code === 0x2021;
}
