import { expect, test } from 'vitest';
import { stringsFor } from '../strings/index.ts';
import { describePosition } from './describe.ts';
import { isFenFault, parseFen } from './fen.ts';
import { initialPosition } from './initial.ts';

const en = stringsFor('en');

function describeFen(fen: string): string {
  const position = parseFen(fen);
  if (isFenFault(position)) throw new Error(position.reason);
  return describePosition(position, en.position);
}

test('both sides from king to pawns, then whose move it is', () => {
  expect(describePosition(initialPosition, en.position)).toBe(
    'White: king e1, queen d1, rooks a1 h1, bishops c1 f1, knights b1 g1, pawns a2 b2 c2 d2 e2 f2 g2 h2. ' +
      'Black: king e8, queen d8, rooks a8 h8, bishops c8 f8, knights b8 g8, pawns a7 b7 c7 d7 e7 f7 g7 h7. ' +
      'White to move.',
  );
});

test('check, mate and stalemate', () => {
  expect(describeFen('4k3/8/8/8/8/8/4r3/4K3 w - -')).toBe(
    'White: king e1. Black: king e8, rook e2. White to move, in check.',
  );
  // Mate and stalemate positions found so by chess.js and chessops alike.
  expect(describeFen('r1bqkb1r/pppp1Qpp/2n2n2/4p3/2B1P3/8/PPPP1PPP/RNB1K1NR b KQkq - 0 4')).toMatch(
    / Black is mated\.$/,
  );
  expect(describeFen('7k/5Q2/6K1/8/8/8/8/8 b - - 0 1')).toMatch(/ Black is stalemated\.$/);
});
