import { expect, test } from 'vitest';
import { attackersOf, inCheck } from './attacks.ts';
import { moved, pieceAt, readBoard, sideToMove, squaresOf } from './board.ts';
import { isFenFault, parseFen } from './fen.ts';
import { initialPosition } from './initial.ts';

function at(fen: string) {
  const position = parseFen(fen);
  if (isFenFault(position)) throw new Error(position.reason);
  return position;
}

// FIDE Laws, 2.3.
test('the initial position', () => {
  const board = readBoard(initialPosition);
  expect(board.size).toBe(32);
  expect(pieceAt(initialPosition, 'd1')).toEqual({ color: 'white', kind: 'queen' });
  expect(pieceAt(initialPosition, 'e8')).toEqual({ color: 'black', kind: 'king' });
  expect(pieceAt(initialPosition, 'e4')).toBeUndefined();
  expect(squaresOf(board, 'black', 'knight')).toEqual(['b8', 'g8']);
  expect(sideToMove(initialPosition)).toBe('white');
});

test('a board is read once for one position', () => {
  expect(readBoard(initialPosition)).toBe(readBoard(initialPosition));
});

test('castling takes the rook along, en passant takes the pawn beside', () => {
  const castled = moved(readBoard(at('4k3/8/8/8/8/8/8/R3K3 w Q -')), 'e1', 'c1');
  expect([...castled.keys()].sort()).toEqual(['c1', 'd1', 'e8']);
  const taken = moved(readBoard(at('4k3/8/8/3pP3/8/8/8/4K3 w - d6')), 'e5', 'd6');
  expect([...taken.keys()].sort()).toEqual(['d6', 'e1', 'e8']);
});

// FIDE Laws, 3.1: "a piece attacks ... even if [it] is constrained from moving".
test('a pinned piece attacks too', () => {
  const position = at('8/6k1/5r2/4B3/8/8/8/4K2R w K -');
  expect(attackersOf(position, 'f1', 'black')).toEqual(['f6']);
});

test('attackers of every kind, in the order of a FEN', () => {
  const position = at('3r3k/8/2n1b3/8/4q3/2p5/8/6K1 w - -');
  expect(attackersOf(position, 'd4', 'black')).toEqual(['d8', 'c6', 'e4']);
  expect(attackersOf(position, 'd2', 'black')).toEqual(['d8', 'c3']);
  expect(attackersOf(position, 'd5', 'black')).toEqual(['d8', 'e6', 'e4']);
  expect(attackersOf(position, 'f1', 'white')).toEqual(['g1']);
});

test('check', () => {
  expect(inCheck(initialPosition)).toBe(false);
  expect(inCheck(at('4k3/8/8/8/8/8/4r3/4K3 w - -'))).toBe(true);
});
