import { describe, expect, test } from 'vitest';
import { illegalEnPassant, perftTables } from '../../../tests/chess/perft-tables.ts';
import { isFenFault, parseFen } from '../fen.ts';
import { fileOf } from '../squares.ts';
import { type CoreMove, GameBoard } from './game-board.ts';

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
        const again: CoreMove[] = [];
        for (let square = 0; square < 128; square++) {
          if (square & 0x88) continue;
          for (let kind = 1; kind <= 6; kind++) board.movesTo(square, kind, again);
        }
        const key = board.key();
        // An expectation for each of a million moves would take longer than the moves.
        if (again.sort(byNumber).join() !== moves.sort(byNumber).join()) {
          expect(again, key).toEqual(moves);
        }
        const wrong = moves.filter((move) => board.takes(move) !== 'taken' in board.describe(move));
        if (wrong.length > 0) expect(wrong, key).toEqual([]);
        const pieces = key.split(' ', 2).join(' ');
        const signature = board.signature();
        const afresh = boardOf(`${key} 0 1`).signature();
        if (signature !== afresh) expect(signature, key).toBe(afresh);
        const twin = signatures.get(signature) ?? pieces;
        if (twin !== pieces) expect(twin, key).toBe(pieces);
        signatures.set(signature, pieces);
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
