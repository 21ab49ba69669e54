import { expect, test } from 'vitest';
import { isFenFault, parseFen } from './fen.ts';
import { hindranceOf } from './hindrance.ts';
import { listMoves } from './rules.ts';
import { squares } from './squares.ts';

function why(fen: string, from: string, to: string): string | undefined {
  const position = parseFen(fen);
  if (isFenFault(position)) throw new Error(position.reason);
  const found = hindranceOf(position, from, to);
  if (found === undefined) return undefined;
  return 'by' in found ? `${found.kind} ${found.by.piece.kind} ${found.by.square}` : found.kind;
}

const start = 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1';

test.each([
  [start, 'a1', 'a3', 'blocked pawn a2'],
  [start, 'b1', 'd2', 'own-piece pawn d2'],
  [start, 'g1', 'g3', 'not-its-way'],
  [start, 'e2', 'e5', 'not-its-way'],
  [start, 'e2', 'd3', 'pawn-takes-nothing'],
  [start, 'e1', 'g1', 'own-piece knight g1'],
  ['4k3/8/8/8/4p3/4P3/8/4K3 w - - 0 1', 'e3', 'e4', 'pawn-takes-sideways pawn e4'],
  ['4k3/8/8/8/8/4P3/8/4K3 w - - 0 1', 'e3', 'e5', 'pawn-has-moved'],
  ['4k3/8/8/8/8/4P3/8/4K3 w - - 0 1', 'e3', 'e2', 'pawn-backwards'],
  // FIDE Laws, 3.9: pinned, in check, into check.
  ['4r1k1/8/8/8/8/8/4N3/4K3 w - - 0 1', 'e2', 'c3', 'pinned rook e8'],
  ['4r1k1/8/8/8/8/8/3N4/4K3 w - - 0 1', 'd2', 'b3', 'stays-in-check rook e8'],
  ['4k3/8/8/8/8/8/r7/4K3 w - - 0 1', 'e1', 'e2', 'into-check rook a2'],
  // Both pawns leave the rank, so the one that takes is not pinned.
  ['4k3/8/8/KPp4r/8/8/8/8 w - c6 0 1', 'b5', 'c6', 'opens-king rook h5'],
  // FIDE Laws, 3.8: castling.
  ['4k3/8/8/8/8/8/8/4K2R w - - 0 1', 'e1', 'g1', 'castling-lost'],
  ['4k3/8/8/8/8/8/8/4K1NR w K - 0 1', 'e1', 'c1', 'castling-lost'],
  ['4k3/8/8/8/8/8/8/RN2K3 w Q - 0 1', 'e1', 'c1', 'blocked knight b1'],
  ['4k3/4r3/8/8/8/8/8/4K2R w K - 0 1', 'e1', 'g1', 'castling-out-of-check rook e7'],
  ['4k3/5r2/8/8/8/8/8/4K2R w K - 0 1', 'e1', 'g1', 'castling-through-check rook f7'],
  ['4k3/6r1/8/8/8/8/8/4K2R w K - 0 1', 'e1', 'g1', 'into-check rook g7'],
  // FIDE Laws, 3.7.3.1: the right to take in passing is gone.
  ['4k3/8/8/3pP3/8/8/8/4K3 w - - 0 1', 'e5', 'd6', 'pawn-takes-nothing'],
])('%s: %s to %s is hindered: %s', (fen, from, to, expected) => {
  expect(why(fen, from, to)).toBe(expected);
});

test('every way that is not legal has its reason', () => {
  const fen = 'r3k2r/p1ppqpb1/bn2pnp1/3PN3/1p2P3/2N2Q1p/PPPBBPPP/R3K2R w KQkq - 0 1';
  const position = parseFen(fen);
  if (isFenFault(position)) throw new Error(position.reason);
  const legal = new Set(listMoves(position).map(({ from, to }) => from + to));
  const own = new Set(listMoves(position).map(({ from }) => from));
  const unreasoned = [...own].flatMap((from) =>
    squares
      .filter((to) => to !== from && !legal.has(from + to))
      .filter((to) => hindranceOf(position, from, to) === undefined),
  );
  expect(unreasoned).toEqual([]);
});
