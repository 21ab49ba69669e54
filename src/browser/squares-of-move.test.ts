import { expect, test } from 'vitest';
import { squaresOfMove } from './squares-of-move.ts';

// Positions before and after a move, set up by hand; FIDE Laws of Chess, 3.7 and 3.8.
const cases = {
  'a quiet move': ['4k3/8/8/8/8/8/8/4KN2', '4k3/8/8/8/8/6N1/8/4K3', 'white', 'f1', 'g3'],
  'a capture': ['4k3/8/8/8/8/6p1/8/4KN2', '4k3/8/8/8/8/6N1/8/4K3', 'white', 'f1', 'g3'],
  'castling short': ['4k2r/8/8/8/8/8/8/4K3', '5rk1/8/8/8/8/8/8/4K3', 'black', 'e8', 'g8'],
  'castling long': ['4k3/8/8/8/8/8/8/R3K3', '4k3/8/8/8/8/8/8/2KR4', 'white', 'e1', 'c1'],
  'en passant': ['4k3/8/8/3pP3/8/8/8/4K3', '4k3/8/3P4/8/8/8/8/4K3', 'white', 'e5', 'd6'],
  'a promotion': ['4k3/P7/8/8/8/8/8/4K3', 'Q3k3/8/8/8/8/8/8/4K3', 'white', 'a7', 'a8'],
  'a capture with promotion': [
    '1r2k3/P7/8/8/8/8/8/4K3',
    '1N2k3/8/8/8/8/8/8/4K3',
    'white',
    'a7',
    'b8',
  ],
} as const;

test.each(Object.entries(cases))('%s', (_name, [before, after, mover, from, to]) => {
  expect(squaresOfMove(before, after, mover)).toEqual({ from, to });
});
