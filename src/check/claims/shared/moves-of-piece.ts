/** What `trapped` and `no-square` share: what each move of a piece would win or lose. */
import { exchangeOf, listed, listMoves, type Position, type Square } from '../../../chess/index.ts';
import { empty, type Verdict } from '../define-claim.ts';
import { judgePiece, type PieceOnBoard } from './judge-piece.ts';
import { turnOf } from './turn-of.ts';

export interface MoveOfPiece {
  readonly san: string;
  /** Pawns that it wins by itself and the captures on its square; below 0 where it loses some. */
  readonly gain: number;
}

/** Judges a knight, bishop, rook or queen by its legal moves, as if it were its side's move. */
export function judgeMoves(
  position: Position,
  square: Square,
  judge: (moves: readonly MoveOfPiece[], here: PieceOnBoard) => Verdict,
): Verdict {
  return judgePiece(position, square, (here) => {
    const { kind } = here.piece;
    if (kind === 'king' || kind === 'pawn') {
      return empty(
        `a ${kind} stands on ${square}, and the claim speaks of pieces that can be lost`,
      );
    }
    const turn = turnOf(position, here.color);
    const moves = listMoves(turn)
      .filter(({ from }) => from === square)
      .map((move) => ({ san: move.san, gain: exchangeOf(turn, move)?.gain ?? 0 }));
    return judge(moves, here);
  });
}

/** A few of the moves, so that the sentence stays short. */
export function named(moves: readonly { readonly san: string }[]): string {
  const shown = moves.slice(0, 4).map(({ san }) => san);
  const more = moves.length - shown.length;
  return listed(more > 0 ? [...shown, `${more} more`] : shown, more > 0 ? 'and' : 'or');
}
