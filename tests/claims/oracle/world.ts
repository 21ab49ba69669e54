/**
 * What the oracle of claims knows of a position. It stands on chessops alone (GPL-3.0-or-later, so in
 * tests only) and follows the definitions of the handbook; nothing of `src` is asked.
 */
import { attacks } from 'chessops/attacks';
import type { Chess } from 'chessops/chess';
import { makeSan } from 'chessops/san';
import type { Color, Move, NormalMove, Piece, Role } from 'chessops/types';
import { parseSquare } from 'chessops/util';

/** `empty` where the claim speaks of something that is not there. */
export type Truth = boolean | 'empty';

export interface World {
  readonly chess: Chess;
  readonly side: Color | 'both';
  /** The position before the last move. */
  readonly before?: Chess | undefined;
  /** Who has castled on the way here. */
  readonly castled: readonly Color[];
  readonly covered: number;
  readonly labelled: (name: string) => Chess | undefined;
}

export const values: Record<Role, number> = {
  pawn: 1,
  knight: 3,
  bishop: 3,
  rook: 5,
  queen: 9,
  king: 1000,
};

export const other = (color: Color): Color => (color === 'white' ? 'black' : 'white');
export const file = (square: number) => square % 8;
export const rank = (square: number) => Math.floor(square / 8);
/** 1 to 8 from the side's own first rank. */
export const ownRank = (square: number, color: Color) =>
  color === 'white' ? rank(square) + 1 : 8 - rank(square);
export const isDarkSquare = (square: number) => (file(square) + rank(square)) % 2 === 0;
export const isLine = ({ role }: Piece) => role === 'bishop' || role === 'rook' || role === 'queen';

export function squareNamed(name: string | undefined): number {
  const square = parseSquare(name ?? '');
  if (square === undefined) throw new Error(`${name} is no square`);
  return square;
}

export function men(chess: Chess, color: Color, role?: Role): number[] {
  return [...chess.board[color]].filter(
    (square) => !role || chess.board.get(square)?.role === role,
  );
}

/** Whether what stands on a square attacks or defends another. */
export function covers(chess: Chess, from: number, to: number): boolean {
  const piece = chess.board.get(from);
  return piece !== undefined && attacks(piece, from, chess.board.occupied).has(to);
}

/** Where men of a colour stand that attack or defend a square. */
export function covering(chess: Chess, square: number, color: Color): number[] {
  return men(chess, color).filter((from) => covers(chess, from, square));
}

/** The squares strictly between two of one line; undefined where they share none. */
export function inBetween(from: number, to: number): number[] | undefined {
  const [df, dr] = [file(to) - file(from), rank(to) - rank(from)];
  if (from === to || (df !== 0 && dr !== 0 && Math.abs(df) !== Math.abs(dr))) return undefined;
  const step = Math.sign(df) + 8 * Math.sign(dr);
  const found: number[] = [];
  for (let at = from + step; at !== to; at += step) found.push(at);
  return found;
}

export function king(chess: Chess, color: Color): number {
  const square = chess.board.kingOf(color);
  if (square === undefined) throw new Error('no king');
  return square;
}

/** The position as if the side had the move; a pass ends a chance to take en passant. */
export function withMove(chess: Chess, color: Color): Chess {
  if (chess.turn === color) return chess;
  const turned = chess.clone();
  turned.turn = color;
  turned.epSquare = undefined;
  return turned;
}

export function played(chess: Chess, move: Move): Chess {
  const after = chess.clone();
  after.play(move);
  return after;
}

/** Legal moves; castling as the king's move of two squares. */
export function movesOf(chess: Chess): NormalMove[] {
  const found: NormalMove[] = [];
  for (const [from, targets] of chess.allDests()) {
    const piece = chess.board.get(from);
    for (const target of targets) {
      const rook = chess.board.get(target);
      const castles = piece?.role === 'king' && rook?.role === 'rook' && rook.color === chess.turn;
      const to = castles ? from + 2 * Math.sign(target - from) : target;
      const promotes = piece?.role === 'pawn' && (rank(to) === 0 || rank(to) === 7);
      if (!promotes) found.push({ from, to });
      else {
        for (const promotion of ['queen', 'rook', 'bishop', 'knight'] as const) {
          found.push({ from, to, promotion });
        }
      }
    }
  }
  return found;
}

/** Where the man stands that a move takes. */
export function takenBy(chess: Chess, { from, to }: NormalMove): number | undefined {
  const piece = chess.board.get(from);
  if (chess.board.get(to)) return to;
  if (piece?.role === 'pawn' && file(from) !== file(to)) return 8 * rank(from) + file(to);
  return undefined;
}

const roles: Readonly<Record<string, Role>> = {
  K: 'king',
  Q: 'queen',
  R: 'rook',
  B: 'bishop',
  N: 'knight',
};
const san = /^([KQRBN]?)([a-h]?)([1-8]?)x?([a-h][1-8])(?:=([QRBN]))?[+#]?$/;

/** The legal moves that a text in SAN may mean. */
export function readMoves(chess: Chess, text: string): NormalMove[] {
  const moves = movesOf(chess);
  if (text.startsWith('O-O')) {
    const far = /^O-O-O/.test(text) ? -2 : 2;
    return moves.filter(
      ({ from, to }) => chess.board.get(from)?.role === 'king' && to - from === far,
    );
  }
  const [, letter = '', column, row, target, promotion] = san.exec(text) ?? [];
  return moves.filter(
    (move) =>
      move.to === squareNamed(target) &&
      chess.board.get(move.from)?.role === (roles[letter] ?? 'pawn') &&
      // A pawn's capture names the file that it comes from.
      file(move.from) ===
        (column ? 'abcdefgh'.indexOf(column) : letter ? file(move.from) : file(move.to)) &&
      (!row || rank(move.from) === Number(row) - 1) &&
      move.promotion === (promotion ? roles[promotion] : undefined),
  );
}

/** Whether a piece's move is written as a capture where it is none, or the other way round. */
export function hasWrongCross(chess: Chess, text: string): boolean {
  if (!/^[KQRBN]/.test(text)) return false;
  return readMoves(chess, text).some(
    (move) => text.includes('x') !== (takenBy(chess, move) !== undefined),
  );
}

/** The move that a text names; undefined where that is none, or more than one. */
export function readMove(chess: Chess, text: string): NormalMove | undefined {
  const moves = readMoves(chess, text);
  return moves.length === 1 && !hasWrongCross(chess, text) ? moves[0] : undefined;
}

export const sanOf = (chess: Chess, move: NormalMove): string => makeSan(chess, move);
