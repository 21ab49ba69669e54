import { describe, expect, test } from 'vitest';
import { isFenFault, parseFen } from '../fen.ts';
import { isMoveFault, playMove } from '../play.ts';
import { isMate, legalMoves } from '../rules.ts';
import type { Color, Position } from '../types.ts';
import { findMate } from './find-mate.ts';

describe('finds the quickest mate', () => {
  test.each<[string, string, Color, number, string | undefined]>([
    ['one rook on the last rank', '6k1/5ppp/8/8/8/8/5PPP/R5K1 w - - 0 1', 'white', 1, 'Ra8#'],
    ['two rooks', '6k1/8/8/8/8/8/R7/1R4K1 w - - 0 1', 'white', 2, undefined],
    ['a smothered king', '5r1k/6pp/7N/8/2Q5/8/8/6K1 w - - 0 1', 'white', 2, 'Qg8+'],
    ['by the side that is not to move', '8/8/8/8/8/2k5/8/K1q5 w - - 0 1', 'black', 1, undefined],
  ])('%s', (_, fen, color, moves, first) => {
    const found = findMate(position(fen), color, 3);
    expect(found).toMatchObject({ result: 'mate', moves, ...(first ? { first } : {}) });
  });
});

test('says when it had to stop, and how far it has come', () => {
  const fen = '8/8/8/3k4/8/8/8/KQ6 w - - 0 1';
  expect(findMate(position(fen), 'white', 9, 20_000)).toEqual({ result: 'undecided', moves: 2 });
});

test('stalemate is no mate', () => {
  expect(findMate(position('7k/8/6KQ/8/8/8/8/8 b - - 0 1'), 'white', 1).result).toBe('mate');
  expect(findMate(position('7k/5Q2/6K1/8/8/8/8/8 b - - 0 1'), 'white', 1).result).toBe('none');
});

// An independent judge: every line by the public functions, which chess.js plays.
test('agrees with a plain search by the public functions', () => {
  for (const fen of [
    'r1bqkb1r/pppp1ppp/2n2n2/4p2Q/2B1P3/8/PPPP1PPP/RNB1K1NR w KQkq - 0 1',
    '3k4/8/3K4/8/8/8/8/7R w - - 0 1',
    '1k6/8/1K6/8/8/8/8/7R b - - 0 1',
    'k7/2Q5/8/1K6/8/8/8/8 w - - 0 1',
    '8/8/8/8/8/5k2/7q/5K2 b - - 0 1',
    '8/8/8/8/8/k7/2p5/K7 b - - 0 1',
    '4k3/4P3/4K3/8/8/8/8/7R w - - 0 1',
  ]) {
    for (const moves of [1, 2]) {
      const side = fen.split(' ')[1] === 'w' ? 'white' : 'black';
      const found = findMate(position(fen), side, moves);
      expect(found.result === 'mate', `${fen} in ${moves}`).toBe(forces(position(fen), moves));
    }
  }
});

function forces(at: Position, moves: number): boolean {
  return legalMoves(at).some((san) => {
    const after = play(at, san);
    if (isMate(after)) return true;
    const replies = legalMoves(after);
    if (moves === 1 || replies.length === 0) return false;
    return replies.every((reply) => forces(play(after, reply), moves - 1));
  });
}

function play(at: Position, san: string): Position {
  const played = playMove(at, san);
  if (isMoveFault(played)) throw new Error(played.reason);
  return played.after;
}

function position(fen: string): Position {
  const found = parseFen(fen);
  if (isFenFault(found)) throw new Error(found.reason);
  return found;
}
