import { expect, test } from 'vitest';
import { stringsFor } from '../../strings/index.ts';
import type { Spot } from '../spots.ts';
import { gameTo } from './game-to.ts';

const { pieceLetters } = stringsFor('de');
const start = { parent: undefined, move: undefined } as unknown as Spot;
const after = (parent: Spot, number: number, color: 'white' | 'black', san: string) =>
  ({ parent, move: { number, color, san } }) as unknown as Spot;
const initial = 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1';

test('moves in the letters of a language become PGN in English ones (PGN standard, 8.1.1 and 8.2.3)', () => {
  const line = after(after(start, 1, 'white', 'Sf3'), 1, 'black', 'd5');
  const game = gameTo(line, () => initial, pieceLetters);
  expect(game).toContain('\n\n1. Nf3 d5 *\n');
  expect(game.match(/^\[/gm)).toHaveLength(7);
  expect(game).not.toContain('FEN');
});

test('a line from elsewhere has its start (PGN standard, 9.7), and castling and promotion stay what they are', () => {
  const fen = '4k3/4P3/8/8/8/8/8/R3K3 b Q - 0 40';
  const line = after(after(start, 40, 'black', 'Kd7'), 41, 'white', 'e8=D+');
  expect(gameTo(line, () => fen, pieceLetters)).toMatch(
    /\[SetUp "1"\]\n\[FEN "4k3[^\n]*\n\n40\.\.\. Kd7 41\. e8=Q\+ \*\n$/,
  );
  const castled = after(start, 1, 'white', 'O-O-O');
  expect(gameTo(castled, () => fen, pieceLetters)).toContain('1. O-O-O *');
});
