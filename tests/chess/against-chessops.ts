/**
 * Compares the chess room with chessops 0.15 (GPL-3.0-or-later, so in tests only), an
 * independent implementation of the rules, at one position after another.
 */
import { attacks } from 'chessops/attacks';
import type { Chess } from 'chessops/chess';
import { makeFen } from 'chessops/fen';
import { makeSan } from 'chessops/san';
import type { Move } from 'chessops/types';
import { makeSquare, parseSquare } from 'chessops/util';
import { expect } from 'vitest';
import {
  attackersOf,
  inCheck,
  isMate,
  isMoveFault,
  isStalemate,
  legalMoves,
  type Position,
  parseFen,
  playMove,
  readBoard,
  sideToMove,
  squares,
} from '../../src/chess/index.ts';

/** All legal moves by chessops, as SAN, with the move that each names. */
export function movesOf(chess: Chess): Map<string, Move> {
  const moves = new Map<string, Move>();
  const context = chess.ctx();
  for (const [from, targets] of chess.allDests(context)) {
    const piece = chess.board.get(from);
    for (const target of targets) {
      const to = castlingTarget(chess, from, target);
      const last = to >> 3 === 0 || to >> 3 === 7;
      const kinds = ['queen', 'rook', 'bishop', 'knight'] as const;
      const promotions = piece?.role === 'pawn' && last ? kinds : [undefined];
      for (const promotion of promotions) {
        const move: Move = promotion ? { from, to, promotion } : { from, to };
        moves.set(makeSan(chess, move), move);
      }
    }
  }
  return moves;
}

/** chessops lets a king castle by the square of its rook: one name for each move is enough. */
function castlingTarget(chess: Chess, from: number, to: number): number {
  const king = chess.board.get(from)?.role === 'king';
  const rook = chess.board.get(to);
  if (!king || rook?.role !== 'rook' || rook.color !== chess.turn) return to;
  return to > from ? from + 2 : from - 2;
}

/** Throws where the two do not agree on a position: its FEN, legal moves in SAN, and state. */
export function compare(position: Position, chess: Chess, moves: ReadonlyMap<string, Move>): void {
  const fen = makeFen(chess.toSetup());
  if (position.fen !== fen) expect(position.fen, 'FEN').toBe(fen);
  const ours = legalMoves(position).sort().join(' ');
  const theirs = [...moves.keys()].sort().join(' ');
  if (ours !== theirs) expect(ours, `legal moves of ${fen}`).toBe(theirs);
  const check = inCheck(position);
  if (check !== chess.isCheck()) expect(check, `check in ${fen}`).toBe(chess.isCheck());
  if (sideToMove(position) !== chess.turn) expect(sideToMove(position), fen).toBe(chess.turn);
  // With moves at hand it is neither, which the comparison of the moves has shown.
  if (moves.size === 0) {
    expect(isMate(position), `mate in ${fen}`).toBe(chess.isCheckmate());
    expect(isStalemate(position), `stalemate in ${fen}`).toBe(chess.isStalemate());
  }
}

/** The dearer facts: every attacker of every square, the board, and the FEN read anew. */
export function compareBoard(position: Position, chess: Chess): void {
  expect(parseFen(position.fen)).toEqual(position);
  expect(isMate(position)).toBe(chess.isCheckmate());
  expect(isStalemate(position)).toBe(chess.isStalemate());
  for (const square of squares) {
    const index = parseSquare(square);
    if (index === undefined) throw new Error(square);
    const piece = chess.board.get(index);
    const expected = piece && { color: piece.color, kind: piece.role };
    expect(readBoard(position).get(square)).toEqual(expected);
    for (const color of ['white', 'black'] as const) {
      const attackers: string[] = [];
      for (const from of chess.board[color]) {
        const attacker = chess.board.get(from);
        if (attacker && attacks(attacker, from, chess.board.occupied).has(index)) {
          attackers.push(makeSquare(from));
        }
      }
      expect(attackersOf(position, square, color).sort(), `${square} by ${color}`).toEqual(
        attackers.sort(),
      );
    }
  }
}

/** Plays one move on both sides. */
export function playBoth(position: Position, chess: Chess, san: string, move: Move): Position {
  const played = playMove(position, san);
  if (isMoveFault(played)) throw new Error(`${san} in ${position.fen}: ${played.reason}`);
  expect(played.san).toBe(san);
  chess.play(move);
  return played.after;
}
