import { expect, test } from 'vitest';
import { isFenFault, parseFen } from '../fen.ts';
import { isMoveFault, playMove } from '../play.ts';
import { bestCapture, exchangeOf, gainfulCaptures } from './exchange.ts';

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

// lithander/Leorik, Leorik.Test/see.epd @9909ac7: a published list of values, by 1, 3, 3, 5, 9. There a
// pinned piece takes back; by the legal captures the seventh comes to +1, as a second judge computed.
test.each([
  ['1k1r4/1pp4p/p7/4p3/8/P5P1/1PP4P/2K1R3 w - - 0 1', 'Rxe5', 1],
  ['1k1r3q/1ppn3p/p4b2/4p3/8/P2N2P1/1PP1R1BP/2K1Q3 w - - 0 1', 'Nxe5', -2],
  ['6k1/1pp4p/p1pb4/6q1/3P1pRr/2P4P/PP1Br1P1/5RKN w - - 0 1', 'Rfxf4', -1],
  ['4q3/1p1pr1k1/1B2rp2/6p1/p3PP2/P3R1P1/1P2R1K1/4Q3 b - - 0 1', 'Rxe4', -4],
  ['7R/5P2/8/8/6r1/3K4/5p2/4k3 w - - 0 1', 'f8=Q', 8],
  ['3q2nk/pb1r1p2/np6/3P2Pp/2p1P3/2R4B/PQ3P1P/3R2K1 w - h6 0 1', 'gxh6', 0],
  ['6r1/4kq2/b2p1p2/p1pPb3/p1P2B1Q/2P4P/2B1R1P1/6K1 w - - 0 1', 'Bxe5', 1],
  ['3r3k/3r4/2n1n3/8/3p4/2PR4/1B1Q4/3R3K w - - 0 1', 'Rxd4', -1],
])('%s %s', (fen, san, gain) => {
  const move = playMove(position(fen), san);
  if (isMoveFault(move)) throw new Error(move.reason);
  expect(exchangeOf(position(fen), move)?.gain).toBe(gain);
});

test('all that a side wins by captures, the best first', () => {
  const fen = '4k3/8/3p4/4n3/8/8/q3R3/R3K3 w - - 0 1';
  const gains = gainfulCaptures(position(fen)).map(({ from, to, gain }) => [from + to, gain]);
  expect(gains).toEqual([
    ['a1a2', 9],
    ['e2a2', 9],
  ]);
});

function position(fen: string) {
  const found = parseFen(fen);
  if (isFenFault(found)) throw new Error(found.reason);
  return found;
}
