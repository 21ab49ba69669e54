import { expect, test } from 'vitest';
import { initialPosition } from './initial.ts';
import { makeFen } from './make-fen.ts';
import { isMoveFault, playMove } from './play.ts';
import type { Position } from './types.ts';

function fenAfter(start: Position, ...moves: string[]): string {
  let position = start;
  let fen = '';
  for (const written of moves) {
    const played = playMove(position, written);
    if (isMoveFault(played)) throw new Error(played.reason);
    position = played.after;
    fen = makeFen(played);
  }
  return fen;
}

// The examples of the PGN standard, 16.1.4.
test.each([
  [['e4'], 'rnbqkbnr/pppppppp/8/8/4P3/8/PPPP1PPP/RNBQKBNR b KQkq e3 0 1'],
  [['e4', 'c5'], 'rnbqkbnr/pp1ppppp/8/2p5/4P3/8/PPPP1PPP/RNBQKBNR w KQkq c6 0 2'],
  [['e4', 'c5', 'Nf3'], 'rnbqkbnr/pp1ppppp/8/2p5/4P3/5N2/PPPP1PPP/RNBQKB1R b KQkq - 1 2'],
])('after %j', (moves, fen) => {
  expect(fenAfter(initialPosition, ...moves)).toBe(fen);
});

test('a single step of a pawn passes over no square', () => {
  expect(fenAfter(initialPosition, 'e3').split(' ')[3]).toBe('-');
});
