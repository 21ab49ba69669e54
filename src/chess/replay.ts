import { fullMoveNumber, sideToMove } from './board.ts';
import { type CoreMove, GameBoard } from './core/game-board.ts';
import type { PositionIndex } from './core/position-index.ts';
import { readPlainSan } from './core/san.ts';
import { initialPosition } from './initial.ts';
import { isMoveFault } from './play.ts';
import { playForgiving } from './play-forgiving.ts';
import type { MoveFault, Position } from './types.ts';

/** A game that is played over move by move, quickly. */
export interface Replay {
  /** `Position.key` of the position reached. */
  readonly key: () => string;
  /** The key before so many of the last moves; where there were fewer, that of the start. */
  readonly keyBefore: (moves: number) => string;
  /** `index.find` of the position reached. */
  readonly placeIn: (index: PositionIndex) => number | undefined;
  /** Plays a move as `playForgiving` reads it; a move that cannot be played changes nothing. */
  readonly play: (written: string) => MoveFault | undefined;
}

/** Nearly all games of a file start alike: a board is copied in a tenth of the time that it takes to read its FEN. */
let lastStart = { fen: initialPosition.fen, board: new GameBoard(initialPosition) };

/**
 * Plays games over faster than `playMove`, for files of many thousand: no SAN and no FEN is written on
 * the way. Whatever is not plain SAN, or names no single move, is judged by `playForgiving`.
 */
export function createReplay(start: Position): Replay {
  if (start.fen !== lastStart.fen) lastStart = { fen: start.fen, board: new GameBoard(start) };
  const board = new GameBoard(lastStart.board);
  const whiteStarts = sideToMove(start) === 'white';
  const first = fullMoveNumber(start);
  const moves: CoreMove[] = [];

  function play(written: string): MoveFault | undefined {
    const move = readPlainSan(board, written);
    if (move === undefined || !board.make(move)) return playWithCare(written);
    moves.push(move);
    return undefined;
  }

  function playWithCare(written: string): MoveFault | undefined {
    const key = board.key();
    const number = first + Math.floor((moves.length + (whiteStarts ? 0 : 1)) / 2);
    const played = playForgiving({ key, fen: `${key} 0 ${number}` }, written);
    if (isMoveFault(played)) return played;
    const { from, to, promotion } = played;
    const move = board.moves().find((each) => {
      const described = board.describe(each);
      return described.from === from && described.to === to && described.promotion === promotion;
    });
    if (move === undefined || !board.make(move)) {
      throw new Error(`the board lost ${written} in ${key}`);
    }
    moves.push(move);
    return undefined;
  }

  function keyBefore(count: number): string {
    const again = moves.slice(-count);
    for (const _ of again) board.unmake();
    const key = board.key();
    for (const move of again) board.make(move);
    return key;
  }

  return { key: () => board.key(), keyBefore, placeIn: (index) => index.find(board), play };
}
