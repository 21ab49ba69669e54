import {
  type Color,
  nameOf,
  type Piece,
  type Position,
  type Square,
} from '../../../chess/index.ts';
import { no, type Verdict } from '../define-claim.ts';
import { judgePiece } from './judge-piece.ts';
import { reaches, whyNotReached } from './reach.ts';

/** A piece that covers a square on which no piece of the other side stands. */
export interface Defender {
  readonly board: ReadonlyMap<string, Piece>;
  readonly color: Color;
  readonly standing: Piece | undefined;
}

/** Judges a claim of a piece that must defend a square; `judge` is asked where it does. */
export function judgeDefender(
  position: Position,
  { from, to }: { readonly from: Square; readonly to: Square },
  judge: (defender: Defender) => Verdict,
): Verdict {
  return judgePiece(position, from, ({ board, color }) => {
    if (!reaches(board, from, to)) return no(whyNotReached(board, from, to));
    const standing = board.get(to);
    if (standing && standing.color !== color) {
      return no(`${nameOf(board, to)} is of the other side: ${nameOf(board, from)} attacks it`);
    }
    return judge({ board, color, standing });
  });
}
