import { englishLetters as english, type PieceLetters } from '../../chess/letters.ts';
import { type PieceKind, pieceKinds, type Square } from '../../chess/types.ts';
import type { BoardMove } from './board-state.ts';

/** The legal moves that a typed move names; `undefined` if it is no move at all. */
export function findTyped(
  typed: string,
  legal: readonly BoardMove[],
  letters: PieceLetters,
): BoardMove[] | undefined {
  const bare = typed.replace(/^\s*\d+(?:\s*(?:\.+|…)\s*|\s+)/, '').replace(/[\s+#!?]+$/g, '');
  const castling = /^[o0]-?[o0](-?[o0])?$/i.exec(bare);
  if (castling !== null) {
    const side = castling[1] === undefined ? /^O-O(?!-O)/ : /^O-O-O/;
    return legal.filter(({ san }) => side.test(san));
  }
  const short = bare.replace(/e\.?p\.?$/, '').replace(/[\sx:×=()-]/g, '');
  const shape = /^(\p{Lu}?)([a-h]?[1-8]?)([a-h][1-8])(\p{L}?)$/u;
  // `bc3` is the pawn on the b-file before it is a bishop in small letters.
  const readings = [short, short.charAt(0).toUpperCase() + short.slice(1)];
  let readable = false;
  for (const reading of readings) {
    const [, letter = '', origin = '', to, promoted = ''] = shape.exec(reading) ?? [];
    if (to === undefined) continue;
    const kind = letter === '' ? 'pawn' : kindOf(letter, letters);
    const promotion = promoted === '' ? undefined : kindOf(promoted.toUpperCase(), letters);
    if (kind === undefined || (promoted !== '' && promotion === undefined)) continue;
    readable = true;
    const found = legal.filter(
      (move) =>
        move.to === to &&
        fits(origin, move.from) &&
        (kindOfSan(move.san, letters) === kind || (letter === '' && origin === move.from)) &&
        (promotion === undefined || move.promotion === promotion),
    );
    if (found.length > 0) return found;
  }
  return readable ? [] : undefined;
}

function fits(origin: string, from: Square): boolean {
  return origin === '' || origin === from || origin === from.charAt(0) || origin === from.charAt(1);
}

function kindOfSan(san: string, letters: PieceLetters): PieceKind {
  if (san.startsWith('O-O')) return 'king';
  const letter = san.charAt(0);
  return /\p{Lu}/u.test(letter) ? (kindOf(letter, letters) ?? 'pawn') : 'pawn';
}

/** A reader may type the letters of the page's language, or the English ones. */
function kindOf(letter: string, letters: PieceLetters): PieceKind | undefined {
  const named = (of: PieceLetters) =>
    pieceKinds.find((kind) => of[kind] !== '' && of[kind] === letter);
  return named(letters) ?? named(english);
}
