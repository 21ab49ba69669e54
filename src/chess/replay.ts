import { type CoreMove, GameBoard } from './core/game-board.ts';
import type { PositionIndex } from './core/position-index.ts';
import { readPlainSan } from './core/san.ts';
import { isMoveFault } from './play.ts';
import { playForgiving } from './play-forgiving.ts';
import type { MoveFault, Position } from './types.ts';

/** A game that is played over move by move, quickly. */
export interface Replay {
  /** Begins another game; that before is forgotten. */
  readonly begin: (start: Position) => void;
  /** `Position.key` of the position reached. */
  readonly key: () => string;
  /** The key after so many of the moves played. */
  readonly keyAfter: (moves: number) => string;
  /** `index.find` of the position reached. */
  readonly placeIn: (index: PositionIndex) => number | undefined;
  /** Plays a move as `playForgiving` reads it; a move that cannot be played changes nothing. */
  readonly play: (written: string) => MoveFault | undefined;
}

/**
 * Plays games over faster than `playMove`, for files of many thousand: no SAN and no FEN is written on
 * the way. Whatever is not plain SAN, or names no single move, is judged by `playForgiving`.
 */
export function createReplay(start: Position): Replay {
  /** Nearly all games of a file start alike: a board is copied in a tenth of the time that it takes to read its FEN. */
  let first = { fen: start.fen, board: new GameBoard(start) };
  const board = new GameBoard(first.board);

  function begin(next: Position): void {
    if (next.fen !== first.fen) first = { fen: next.fen, board: new GameBoard(next) };
    board.copy(first.board);
  }

  function play(written: string): MoveFault | undefined {
    const move = readPlainSan(board, written);
    return move === undefined || !board.make(move) ? playWithCare(written) : undefined;
  }

  function playWithCare(written: string): MoveFault | undefined {
    const key = board.key();
    const played = playForgiving({ key, fen: `${key} 0 1` }, written);
    if (isMoveFault(played)) return played;
    const { from, to, promotion } = played;
    const move = board.moves().find((each) => {
      const described = board.describe(each);
      return described.from === from && described.to === to && described.promotion === promotion;
    });
    if (move === undefined || !board.make(move)) {
      throw new Error(`the board lost ${written} in ${key}`);
    }
    return undefined;
  }

  function keyAfter(count: number): string {
    const later: CoreMove[] = [];
    while (board.movesMade() > count) later.push(board.unmake() ?? 0);
    const key = board.key();
    for (const move of later.reverse()) board.make(move);
    return key;
  }

  return { begin, key: () => board.key(), keyAfter, placeIn: (index) => index.find(board), play };
}
