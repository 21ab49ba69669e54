import { expect, test } from 'vitest';
import { isFenFault, parseFen } from './fen.ts';
import { initialPosition } from './initial.ts';
import { whyNeverFrom } from './never-from.ts';
import { isMoveFault, playMove } from './play.ts';
import type { Position } from './types.ts';

function play(moves: string): Position {
  return moves.split(' ').reduce((position, san) => {
    const move = playMove(position, san);
    if (isMoveFault(move)) throw new Error(move.reason);
    return move.after;
  }, initialPosition);
}

// FIDE Laws of Chess, 3.7 (how pawns go) and 3.8.2.1 (a right to castle that is lost).
test.each([
  ['e4', 'd4', 'no white pawn can come to e2'],
  ['e4 e5', 'e4 e6', 'no black pawn can come to e6'],
  ['e4 d5 exd5', 'e4 d5', 'Black has more men there'],
  ['e4 e5 Ke2', 'e4 e5 Nf3', 'a right to castle that is lost is there again'],
])('after %s never %s', (here, there, reason) => {
  expect(whyNeverFrom(play(here), play(there))).toBe(reason);
});

test.each([
  ['e4', 'e4 e5 Nf3'],
  ['c4 e6 d4', 'd4 d5 c4 e6'],
  ['e4 d5', 'e4 d5 exd5 c6 dxc6 bxc6'],
  ['Nf3', 'd4'],
])('after %s perhaps %s', (here, there) => {
  expect(whyNeverFrom(play(here), play(there))).toBeUndefined();
});

test('a pawn comes to another file by a capture alone', () => {
  const here = parseFen('4k3/8/8/8/8/8/2P1P3/4K3 w - - 0 1');
  const there = parseFen('4k3/8/8/8/4P3/3P4/8/4K3 w - - 0 1');
  if (isFenFault(here) || isFenFault(there)) throw new Error('a FEN is wrong');
  expect(whyNeverFrom(here, there)).toBe('no white pawn can come to d3');
});
