/**
 * The rules of play, asked of positions. One board is kept set up, since the position that is asked for
 * next is most often the one just reached.
 */
import { type CoreMove, GameBoard } from './core/game-board.ts';
import { makeSan, readSan } from './core/san.ts';
import { initialPosition } from './initial.ts';
import type { PieceKind, PlayedMove, Position, Square } from './types.ts';

/** A move that may be played. */
export interface LegalMove {
  /** Canonical SAN (PGN standard, 8.2.3). */
  readonly san: string;
  readonly kind: PieceKind;
  readonly from: Square;
  readonly to: Square;
  readonly capture: boolean;
  readonly promotion?: PieceKind;
}

let board = new GameBoard(initialPosition);
let onBoard = initialPosition.fen;

function setUp(position: Pick<Position, 'fen'>): GameBoard {
  if (onBoard !== position.fen) {
    board = new GameBoard(position);
    onBoard = position.fen;
  }
  return board;
}

/** The position of a FEN that is known to be sound; castling rights put in order, en passant only where it is legal. */
export function settle(fen: string): Position {
  const key = setUp({ fen }).key();
  const [clock, number] = countersOf(fen);
  return { fen: `${key} ${clock} ${number}`, key };
}

/** Plays a move written in SAN; absent if that names no legal move. Its `+` or `#` is not looked at. */
export function playSan(position: Position, san: string): PlayedMove | undefined {
  const move = readSan(setUp(position), san);
  return move === undefined ? undefined : play(position, move);
}

/** Plays a legal move of the position on the board. */
function play(position: Position, move: CoreMove): PlayedMove {
  const game = setUp(position);
  const { from, to, kind, taken, promotion } = game.describe(move);
  const color = game.sideToMove();
  const san = makeSan(game, move);
  const [clock, number] = countersOf(position.fen);
  const key = game.key();
  const quiet = kind !== 'pawn' && taken === undefined ? clock + 1 : 0;
  const after = { fen: `${key} ${quiet} ${color === 'black' ? number + 1 : number}`, key };
  onBoard = after.fen;
  return promotion
    ? { san, from, to, promotion, color, number, after }
    : { san, from, to, color, number, after };
}

/** The half-moves since the last capture or pawn move, and the number of the move to be played. */
function countersOf(fen: string): [clock: number, number: number] {
  const [, , , , clock = '0', number = '1'] = fen.split(' ');
  return [Number(clock), Number(number)];
}

/** All legal moves in canonical SAN. */
export function legalMoves(position: Position): string[] {
  return listMoves(position).map(({ san }) => san);
}

const lists = new WeakMap<Position, readonly LegalMove[]>();

/** All legal moves with their squares, made once for a position object. */
export function listMoves(position: Position): readonly LegalMove[] {
  let list = lists.get(position);
  if (list === undefined) {
    const game = setUp(position);
    list = game.legalMoves().map((move) => {
      const { taken, ...described } = game.describe(move);
      const san = makeSan(game, move);
      game.unmake();
      return { san, ...described, capture: taken !== undefined };
    });
    lists.set(position, list);
  }
  return list;
}

/** Whether the side to move is mated. */
export function isMate(position: Position): boolean {
  const game = setUp(position);
  return game.inCheck() && !game.hasLegalMove();
}

/** Whether the side to move has no legal move and is not in check. */
export function isStalemate(position: Position): boolean {
  const game = setUp(position);
  return !game.inCheck() && !game.hasLegalMove();
}
