import { expect, test } from 'vitest';
import { isFenFault, parseFen } from '../fen.ts';
import { wonByCaptures, wonByMoves } from './material.ts';

const budget = () => ({ left: 100_000 });

// Common practice, no source: the sums are done by hand.
test.each([
  ['nothing to take', '3k4/8/8/8/8/8/4R3/4K3 w - - 0 1', 0],
  ['a knight that nobody defends', '4k3/8/8/4n3/8/8/4R3/4K3 w - - 0 1', 3],
  ['a knight that a pawn defends', '4k3/8/3p4/4n3/8/8/4R3/4K3 w - - 0 1', 0],
  ['a queen for a queen', '3qr1k1/8/8/8/8/8/8/3Q2K1 w - - 0 1', 0],
  ['a knight, where the queen would fall', 'q3k3/8/8/8/8/3p4/2N5/R3K3 b - - 0 1', 0],
  ['a pawn that becomes a queen', '4k3/P7/8/8/8/8/8/4K3 w - - 0 1', 8],
])('by captures: %s', (_, fen, won) => {
  expect(wonByCaptures(position(fen), budget())).toBe(won);
});

test.each([
  ['a fork of king and queen', 'q3k3/8/8/1N6/8/8/8/4K3 w - - 0 1', 9],
  ['mate', '6k1/5ppp/8/8/8/8/8/R3K3 w - - 0 1', 1000],
  ['stalemate wins nothing', '7k/5Q2/8/8/8/8/8/K7 b - - 0 1', 0],
])('by moves: %s', (_, fen, won) => {
  expect(wonByMoves(position(fen), 2, budget())).toBe(won);
});

test('a search without a budget looks at nothing', () => {
  const none = { left: 0 };
  wonByCaptures(position('4k3/8/8/4n3/8/8/4R3/4K3 w - - 0 1'), none);
  expect(none.left).toBeLessThanOrEqual(0);
});

function position(fen: string) {
  const found = parseFen(fen);
  if (isFenFault(found)) throw new Error(found.reason);
  return found;
}
