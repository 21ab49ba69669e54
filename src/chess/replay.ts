import { sideToMove } from './board.ts';
import { GameBoard } from './core/game-board.ts';
import { readSan } from './core/san.ts';
import { isMoveFault, playMove } from './play.ts';
import type { MoveFault, Position } from './types.ts';

/** A game that is played over move by move, quickly. */
export interface Replay {
  /** `Position.key` of the position reached. */
  readonly key: () => string;
  /** Plays a move as `playMove` reads it; a move that cannot be played changes nothing. */
  readonly play: (written: string) => MoveFault | undefined;
}

/**
 * Plays games over faster than `playMove`, for files of many thousand: no SAN and no FEN is written on
 * the way. Whatever is not plain SAN, or names no single move, is judged by `playMove`.
 */
export function createReplay(start: Position): Replay {
  const board = new GameBoard(start);
  const whiteStarts = sideToMove(start) === 'white';
  const first = Number(start.fen.slice(start.fen.lastIndexOf(' ') + 1));
  let plies = 0;

  function play(written: string): MoveFault | undefined {
    const move = readSan(board, written);
    if (move === undefined || !board.make(move)) return playWithCare(written);
    plies++;
    return undefined;
  }

  function playWithCare(written: string): MoveFault | undefined {
    const key = board.key();
    const number = first + Math.floor((plies + (whiteStarts ? 0 : 1)) / 2);
    const played = playMove({ key, fen: `${key} 0 ${number}` }, written);
    if (isMoveFault(played)) return played;
    const { from, to, promotion } = played;
    const move = board.moves().find((each) => {
      const described = board.describe(each);
      return described.from === from && described.to === to && described.promotion === promotion;
    });
    if (move === undefined || !board.make(move)) {
      throw new Error(`the board lost ${written} in ${key}`);
    }
    plies++;
    return undefined;
  }

  return { key: () => board.key(), play };
}
