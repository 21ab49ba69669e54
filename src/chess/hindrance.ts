/**
 * Why a piece may not go from one square to another, as data: FIDE Laws, 3.1 to 3.9. The sentences are
 * those of whoever asks; `fault/` says the same to authors, in English, of moves that are written.
 */
import { attacksOf, slides } from './attacks.ts';
import { type Board, readBoard } from './board.ts';
import { castlingBar, kingDanger } from './king-danger.ts';
import { between, fileOf, rankOf, relativeRank, step } from './squares.ts';
import type { Color, Piece, Position, Square } from './types.ts';

/** A piece on its square. */
export interface PlacedPiece {
  readonly piece: Piece;
  readonly square: Square;
}

export type Hindrance =
  /** No such move of the piece, wherever it stands. */
  | { readonly kind: 'not-its-way' }
  /** A piece of its own side stands on the target. */
  | { readonly kind: 'own-piece'; readonly by: PlacedPiece }
  /** A piece stands between. */
  | { readonly kind: 'blocked'; readonly by: PlacedPiece }
  | { readonly kind: 'pinned'; readonly by: PlacedPiece }
  /** The king is in check already, and would stay so. */
  | { readonly kind: 'stays-in-check'; readonly by: PlacedPiece }
  /** The king would go into check. */
  | { readonly kind: 'into-check'; readonly by: PlacedPiece }
  /** A pawn that takes in passing would open its king. */
  | { readonly kind: 'opens-king'; readonly by: PlacedPiece }
  | { readonly kind: 'pawn-takes-nothing' }
  | { readonly kind: 'pawn-takes-sideways'; readonly by: PlacedPiece }
  | { readonly kind: 'pawn-backwards' }
  | { readonly kind: 'pawn-has-moved' }
  | { readonly kind: 'castling-lost' }
  | { readonly kind: 'castling-out-of-check'; readonly by: PlacedPiece }
  | { readonly kind: 'castling-through-check'; readonly over: Square; readonly by: PlacedPiece };

/** Why the piece on `from`, whose side is to move, may not go to `to`; absent if `from` is empty. */
export function hindranceOf(position: Position, from: Square, to: Square): Hindrance | undefined {
  const board = readBoard(position);
  const piece = board.get(from);
  if (piece === undefined) return undefined;
  const own = pieceOn(board, to);
  if (own?.piece.color === piece.color) return { kind: 'own-piece', by: own };
  const castling = piece.kind === 'king' && isCastling(from, to, piece.color);
  if (castling) return castlingHindrance(position, board, piece.color, to);
  const way = piece.kind === 'pawn' ? pawnHindrance(position, from, to) : wayOf(board, from, to);
  return way ?? kingHindrance(board, from, to) ?? { kind: 'not-its-way' };
}

function pieceOn(board: Board, square: Square | undefined): PlacedPiece | undefined {
  const piece = square === undefined ? undefined : board.get(square);
  return square === undefined ? undefined : piece && { piece, square };
}

function wayOf(board: Board, from: Square, to: Square): Hindrance | undefined {
  const piece = board.get(from);
  if (piece === undefined) return undefined;
  if (!attacksOf(new Map(), piece, from).includes(to)) return { kind: 'not-its-way' };
  if (!slides(piece)) return undefined;
  const blocker = between(from, to)?.find((square) => board.has(square));
  const by = pieceOn(board, blocker);
  return by && { kind: 'blocked', by };
}

function pawnHindrance(position: Position, from: Square, to: Square): Hindrance | undefined {
  const board = readBoard(position);
  const color = board.get(from)?.color ?? 'white';
  const forward = color === 'white' ? 1 : -1;
  const ranks = (rankOf(to) - rankOf(from)) * forward;
  const files = Math.abs(fileOf(to) - fileOf(from));
  if (ranks < 0) return { kind: 'pawn-backwards' };
  const target = pieceOn(board, to);
  if (files === 0) {
    if (ranks > 2 || ranks === 0) return { kind: 'not-its-way' };
    if (ranks === 2 && relativeRank(from, color) !== 2) return { kind: 'pawn-has-moved' };
    const first = step(from, 0, forward);
    const by = pieceOn(board, first) ?? target;
    if (by === undefined) return undefined;
    return by.square === to && by.piece.color !== color
      ? { kind: 'pawn-takes-sideways', by }
      : { kind: 'blocked', by };
  }
  if (files !== 1 || ranks !== 1) return { kind: 'not-its-way' };
  const passes = position.key.split(' ')[3] === to;
  if (target !== undefined || passes) return undefined;
  // The position keeps the right only where the capture is legal.
  const passed = step(to, 0, -forward);
  const stood = pieceOn(board, passed);
  const mayPass = stood?.piece.kind === 'pawn' && relativeRank(to, color) === 6;
  const safety = mayPass ? kingHindrance(board, from, to) : undefined;
  return safety ?? { kind: 'pawn-takes-nothing' };
}

/** What the own king's safety has against the move. */
function kingHindrance(board: Board, from: Square, to: Square): Hindrance | undefined {
  const danger = kingDanger(board, from, to);
  const by = pieceOn(board, danger?.attackers[0]);
  return danger && by && { kind: danger.kind, by };
}

function isCastling(from: Square, to: Square, color: Color): boolean {
  const home = color === 'white' ? '1' : '8';
  return from === `e${home}` && (to === `g${home}` || to === `c${home}`);
}

function castlingHindrance(
  position: Position,
  board: Board,
  color: Color,
  to: Square,
): Hindrance | undefined {
  const bar = castlingBar(position, color, to.startsWith('g') ? 'king' : 'queen');
  if (bar === undefined || bar.kind === 'castling-lost') return bar;
  const by = pieceOn(board, bar.kind === 'blocked' ? bar.by : bar.attackers[0]);
  if (by === undefined) return undefined;
  return bar.kind === 'castling-through-check'
    ? { kind: bar.kind, over: bar.at, by }
    : { kind: bar.kind, by };
}
