/** Why a text is not written as a move. */
import { isNullMove, plainSpelling } from '../spelling.ts';
import type { MoveFault } from '../types.ts';
import { kindsOfForeignLetter } from './letters.ts';

export function unreadableReason(written: string): Pick<MoveFault, 'kind' | 'reason'> {
  if (isNullMove(written)) {
    return { kind: 'illegal', reason: 'this stands for passing, and nobody may pass' };
  }
  return { kind: 'unreadable', reason: reasonOf(plainSpelling(written)) };
}

function reasonOf(plain: string): string {
  if (plain === '') return 'no move is written';
  if (/^[KQRBNP]+-[KQRBNP]+\d/.test(plain)) {
    return 'this is descriptive notation, and only algebraic notation is read';
  }
  const [, letter = '', rest = ''] = /^(\p{L})(.*)$/u.exec(plain) ?? [];
  if (/^[a-h]?[1-8]?x?[a-h][1-8]$/.test(rest)) {
    if (/[kqrn]/.test(letter)) return `${letter} is no file, and a piece is written with a capital`;
    if (/[A-H]/.test(letter) && !kindsOfForeignLetter(letter)) {
      return `${letter} stands for no piece, and a file is written with a small letter`;
    }
    return `${letter} stands for no piece: the English letters are K, Q, R, B and N`;
  }
  if (/^[KQRBN]?x?[A-H][1-8]$/.test(plain)) return 'the letters of the files are small, a to h';
  const square = /[a-z]\d+$/.exec(plain)?.[0];
  if (square !== undefined && !/^[a-h][1-8]$/.test(square)) {
    return `the board has no square ${square}`;
  }
  const [, likeDigit] = /^[KQRBN]?[a-h]?[1-8]?x?[a-h]([lI])$/.exec(plain) ?? [];
  if (likeDigit !== undefined)
    return `it ends with the letter ${likeDigit} in place of the digit 1`;
  if (/^[KQRBN]?[a-h]?x?[a-h]?$/.test(plain)) {
    return 'the square that the piece goes to is not named in full';
  }
  return 'this is not written as a move: a piece letter (none for a pawn) and a square, such as Nf3 or e4';
}
