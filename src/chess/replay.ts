import { kindOfLetter, sideToMove } from './board.ts';
import { isMoveFault, playMove } from './play.ts';
import { SearchBoard, type SearchMove } from './search/search-board.ts';
import type { MoveFault, Position } from './types.ts';

/** A game that is played over move by move, quickly. */
export interface Replay {
  /** `Position.key` of the position reached. */
  readonly key: () => string;
  /** Plays a move as `playMove` reads it; a move that cannot be played changes nothing. */
  readonly play: (written: string) => MoveFault | undefined;
}

const plainMove = /^([KQRBN]?)([a-h]?)([1-8]?)(x?)([a-h][1-8])(?:=([QRBN]))?[+#]?$/;
const castling = /^O-O(-O)?[+#]?$/;

/**
 * Plays games over some twenty times as fast as `playMove`, for files of many thousand. What is
 * plain SAN goes to a board that is changed in place; whatever else is written, or names no
 * single move, is judged by `playMove`.
 */
export function createReplay(start: Position): Replay {
  const board = new SearchBoard(start);
  const whiteStarts = sideToMove(start) === 'white';
  const first = Number(start.fen.slice(start.fen.lastIndexOf(' ') + 1));
  let plies = 0;

  function play(written: string): MoveFault | undefined {
    const move = find(written);
    if (move === undefined || !board.make(move)) return playWithCare(written);
    plies++;
    return undefined;
  }

  /** The one move that plain SAN names. */
  function find(written: string): SearchMove | undefined {
    const [whole, letter, file, rank, sign, to = '', promoted] = plainMove.exec(written) ?? [];
    if (whole === undefined) {
      const [castles, long] = castling.exec(written) ?? [];
      return castles === undefined ? undefined : board.castling(long ? 'c' : 'g');
    }
    const kind = kindOfLetter[(letter || 'P').toLowerCase()] ?? 'pawn';
    let found: SearchMove | undefined;
    for (const move of board.movesTo(to, kind)) {
      const { from, promotion, taken } = board.describe(move);
      if (file && from[0] !== file) continue;
      if (rank && from[1] !== rank) continue;
      if ((taken !== undefined) !== (sign === 'x')) continue;
      if (promotion !== (promoted && kindOfLetter[promoted.toLowerCase()])) continue;
      if (!board.make(move)) continue;
      board.unmake();
      if (found !== undefined) return undefined;
      found = move;
    }
    return found;
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
      throw new Error(`two sets of rules disagree on ${written} in ${key}`);
    }
    plies++;
    return undefined;
  }

  return { key: () => board.key(), play };
}
