import { describe, expect, test } from 'vitest';
import { illegalEnPassant, perftTables } from '../../../tests/chess/perft-tables.ts';
import { isFenFault, parseFen } from '../fen.ts';
import { GameBoard } from './game-board.ts';

// Published counts: see the head of perft-tables.ts. A test elsewhere holds chess.js against them.
describe('counts the moves of the published perft tables', () => {
  for (const { name, fen, nodes } of perftTables) {
    test(name, () => {
      const board = boardOf(fen);
      expect(nodes.map((_, index) => perft(board, index + 1))).toEqual(nodes);
    });
  }

  test('an en-passant capture that would open the rank of the king', () => {
    const { fen, depth, nodes } = illegalEnPassant;
    expect(perft(boardOf(fen), depth)).toBe(nodes);
  });
});

function boardOf(fen: string): GameBoard {
  const position = parseFen(fen);
  if (isFenFault(position)) throw new Error(position.reason);
  return new GameBoard(position);
}

function perft(board: GameBoard, depth: number): number {
  let count = 0;
  for (const move of board.moves()) {
    if (!board.make(move)) continue;
    count += depth === 1 ? 1 : perft(board, depth - 1);
    board.unmake();
  }
  return count;
}
