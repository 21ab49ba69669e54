import { type PieceLetters, sanIn } from '../../chess/letters.ts';
import { listMoves, playSan } from '../../chess/rules.ts';
import type { Position } from '../../chess/types.ts';
import type { BoardMove } from '../board/board-state.ts';

/** A legal move, and `Position.key` of the position that it leads to, which tells it from others. */
export interface MoveHere extends BoardMove {
  readonly id: string;
}

/** The legal moves of a position, in the letters of the page. @param key `Position.key` */
export function legalHere(key: string, letters: PieceLetters): MoveHere[] {
  // The counters bear on no move.
  const position: Position = { fen: `${key} 0 1`, key };
  return listMoves(position).flatMap(({ san, from, to, promotion }) => {
    const after = playSan(position, san)?.after.key;
    return after === undefined
      ? []
      : [{ san: sanIn(letters, san), from, to, promotion, id: after }];
  });
}
