import { expect, test } from 'vitest';
import { splitMoves, splitUnbroken } from './split-moves.ts';

const pieces = (text: string, letters: string) =>
  splitMoves(text, letters)
    .map(({ text, isPiece }) => (isPiece ? `[${text}]` : text))
    .join('');

test('letters of pieces are found in moves as they are printed (PGN standard, 8.2.3), and nowhere else', () => {
  expect(pieces('After 7...Be7 8.Nbxd2! (or Nf3, Qh4+) R1a3 Qh4xe1# e8=Q+', 'KQRBN')).toBe(
    'After 7...[B]e7 8.[N]bxd2! (or [N]f3, [Q]h4+) [R]1a3 [Q]h4xe1# e8=[Q]+',
  );
  for (const text of ['A4, B2 and Nf3x', 'O-O-O', 'the Be7er', 'KNf3', 'x=Q', 'Nb9', 'e4 bxc3']) {
    expect(pieces(text, 'KQRBN')).toBe(text);
  }
});

test('letters are those of the language', () => {
  expect(pieces('nach 3...Sc6 4.Lb5, nicht 4.Nc3; f1=S', 'KDTLS')).toBe(
    'nach 3...[S]c6 4.[L]b5, nicht 4.Nc3; f1=[S]',
  );
  expect(pieces('tras 3...Cc6 4.Ab5 Dd7', 'RDTAC')).toBe('tras 3...[C]c6 4.[A]b5 [D]d7');
});

test('what touches a letter is one run with it, and words stand apart', () => {
  const runs = (text: string) =>
    splitUnbroken(text, 'KQRBN').map((run) => run.map(({ text }) => text).join(''));
  expect(runs('White answers with 5.Nxc6 and (7...Nbd2), then b4')).toEqual([
    'White',
    ' answers with ',
    '5.Nxc6',
    ' and ',
    '(7...Nbd2),',
    ' then ',
    'b4',
  ]);
});
