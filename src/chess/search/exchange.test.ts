import { expect, test } from 'vitest';
import { isFenFault, parseFen } from '../fen.ts';
import { bestCapture, exchangeOf } from './exchange.ts';

// Common practice, no source: the sums are done by hand.
test.each([
  ['an undefended knight', '4k3/8/8/4n3/8/8/4R3/4K3 w - - 0 1', 'e5', 3],
  ['a knight that a pawn defends', '4k3/8/3p4/4n3/8/8/4R3/4K3 w - - 0 1', 'e5', -2],
  ['a knight whose one defender is pinned', '2k5/2b5/8/4n3/8/8/2R1R3/4K3 w - - 0 1', 'e5', 3],
  ['a second rook behind the first', '4k3/4r3/8/4n3/8/8/4R3/4R1K1 w - - 0 1', 'e5', 3],
  [
    'a pawn defended once and attacked twice, by pieces',
    '4k3/8/3p4/4p3/8/5N2/4R3/4K3 w - - 0 1',
    'e5',
    -1,
  ],
  ['a pawn en passant', '4k3/8/8/8/3pP3/8/8/4K3 b - e3 0 1', 'e4', 1],
  ['a rook that a pawn takes and promotes', '1r2k3/P7/8/8/8/8/8/4K3 w - - 0 1', 'b8', 13],
  ['a defended rook that a pawn takes and promotes', '1r1rk3/P7/8/8/8/8/8/4K3 w - - 0 1', 'b8', 4],
  ['a king may not take what is defended', '4k3/8/8/8/8/4p3/3p4/4K3 w - - 0 1', 'd2', undefined],
])('%s', (_, fen, square, gain) => {
  expect(bestCapture(position(fen), square)?.gain).toBe(gain);
});

test('a promotion counts what it makes of the pawn', () => {
  const fen = '4k3/P7/8/8/8/8/8/4K3 w - - 0 1';
  const move = { from: 'a7', to: 'a8', promotion: 'queen' } as const;
  expect(exchangeOf(position(fen), move)?.gain).toBe(8);
  expect(exchangeOf(position(fen), { ...move, to: 'b8' })).toBeUndefined();
});

function position(fen: string) {
  const found = parseFen(fen);
  if (isFenFault(found)) throw new Error(found.reason);
  return found;
}
