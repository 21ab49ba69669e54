import { describe, expect, test } from 'vitest';
import { illegalEnPassant, perftTables } from '../../../tests/chess/perft-tables.ts';
import { isFenFault, parseFen } from '../fen.ts';
import { fileOf, squares } from '../squares.ts';
import { pieceKinds } from '../types.ts';
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

describe('beside the moves of the perft tables', () => {
  /** Calls `visit` at each position that is reached in so many half-moves. */
  function walk(board: GameBoard, depth: number, visit: () => void): void {
    visit();
    if (depth === 0) return;
    for (const move of board.moves()) {
      if (!board.make(move)) continue;
      walk(board, depth - 1, visit);
      board.unmake();
    }
  }

  for (const { name, fen } of perftTables) {
    test(`the moves of a kind to a square, and the signature: ${name}`, () => {
      const board = boardOf(fen);
      const signatures = new Map<number, string>();
      walk(board, 2, () => {
        const moves = board.moves().filter((move) => !isCastling(board, move));
        const again = squares.flatMap((square) =>
          pieceKinds.flatMap((kind) => board.movesTo(square, kind)),
        );
        expect(again.sort(byNumber)).toEqual(moves.sort(byNumber));
        // An expectation for each of a million moves would take longer than the moves.
        expect(
          moves.filter((move) => board.takes(move) !== 'taken' in board.describe(move)),
        ).toEqual([]);
        const key = board.key();
        const pieces = key.split(' ', 2).join(' ');
        expect(board.signature()).toBe(boardOf(`${key} 0 1`).signature());
        expect(signatures.get(board.signature()) ?? pieces).toBe(pieces);
        signatures.set(board.signature(), pieces);
      });
    });
  }
});

const byNumber = (one: number, other: number) => one - other;

function isCastling(board: GameBoard, move: number): boolean {
  const { kind, from, to } = board.describe(move);
  return kind === 'king' && Math.abs(fileOf(from) - fileOf(to)) === 2;
}

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
