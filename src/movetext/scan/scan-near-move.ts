import { isDigit } from './characters.ts';
import { scanMove, scanWord } from './scan-move.ts';
import { isSpace } from './scan-words.ts';

/** A piece and its square with a letter or two digits for the rank, or with none: `Rel`, `NfB`, `Nf33`, `Re`. */
const pieceMove = /^[KQRBN][a-h]?[1-8]?x?[a-h](?:[A-Za-z0]|\d\d)?$/;
/** The letters that look like digits, behind a file: `Rel`, `ReI`. */
const lookalike = /^[KQRBN][a-h]?[1-8]?x?[a-h][lI0O]$/;
/** The same of a pawn: too many short words look so for it to be taken without a number before it. */
const pawnMove = /^(?:[a-h]x)?[a-h](?:[A-Za-z0]|\d\d)(?:=[QRBN])?$/;

/**
 * The end of a word at `at` that is one sign away from a move, its check sign included; `sure` where it
 * is a move also without a number before it. What follows must be able to follow a move: `Be careful` is none.
 */
export function scanNearMove(
  text: string,
  at: number,
  limit: number,
): { readonly end: number; readonly sure: boolean } | undefined {
  let end = Math.min(scanWord(text, at), limit);
  if (end - at > 6) return undefined;
  const word = text.slice(at, end);
  const isPiece = pieceMove.test(word);
  if (!isPiece && !pawnMove.test(word)) return undefined;
  if (/[+#]/.test(text.charAt(end))) end++;
  const next = nextInk(text, end, limit);
  if (next === undefined) return undefined;
  const isWord = /^[KQRBN][a-z]+$/.test(word) && !isDigit(text.charCodeAt(next));
  return { end, sure: lookalike.test(word) || (isPiece && !isWord) };
}

/** Where what follows a move begins; undefined where it can follow none. */
function nextInk(text: string, end: number, limit: number): number | undefined {
  let next = end;
  while (next < limit && /[!?]/.test(text.charAt(next))) next++;
  const glyphEnd = next;
  while (next < limit && isSpace(text.charCodeAt(next))) next++;
  if (next >= limit || /[(){;$*]/.test(text.charAt(next))) return next;
  if (next === glyphEnd) return undefined;
  const follows = isDigit(text.charCodeAt(next)) || scanMove(text, next) !== undefined;
  return follows ? next : undefined;
}
