import { attackersOn, nameSquares, type Position, type Square } from '../../../chess/index.ts';
import { empty, type Verdict } from '../define-claim.ts';
import { verb } from './english.ts';
import { judgePiece } from './judge-piece.ts';

interface Defenders {
  readonly count: number;
  /** The reason where there are some, and where there are none. */
  readonly some: string;
  readonly none: string;
}

/** Judges a piece by what defends it; empty for a king, which cannot be taken. */
export function judgeDefenders(
  position: Position,
  square: Square,
  judge: (defenders: Defenders) => Verdict,
): Verdict {
  return judgePiece(position, square, ({ board, piece, color }) => {
    if (piece.kind === 'king') {
      return empty(`the king stands on ${square}, and a king is neither loose nor defended`);
    }
    const defenders = attackersOn(board, square, color).sort();
    return judge({
      count: defenders.length,
      some: `${nameSquares(board, defenders)} ${verb(defenders.length, 'defends', 'defend')} it`,
      none: `no ${color} piece or pawn defends it`,
    });
  });
}
