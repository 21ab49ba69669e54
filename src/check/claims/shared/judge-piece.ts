/** Claims about what stands on a square say first what stands there. */
import {
  type Board,
  type Color,
  type Piece,
  type Position,
  readBoard,
  type Square,
} from '../../../chess/index.ts';
import { empty, type Verdict } from '../define-claim.ts';

export interface PieceOnBoard {
  readonly board: Board;
  readonly piece: Piece;
  readonly color: Color;
  readonly square: Square;
}

/** Judges the piece on a square; the claim is empty where none stands. */
export function judgePiece(
  position: Position,
  square: Square,
  judge: (here: PieceOnBoard) => Verdict,
): Verdict {
  const board = readBoard(position);
  const piece = board.get(square);
  if (!piece) return empty(`${square} is empty`);
  return judge({ board, piece, color: piece.color, square });
}

/** Judges the piece of a kind on a square; the claim is empty where none stands. */
export function judgeKind(
  position: Position,
  square: Square,
  kind: Piece['kind'],
  judge: (here: PieceOnBoard) => Verdict,
): Verdict {
  return judgePiece(position, square, (here) =>
    here.piece.kind === kind
      ? judge(here)
      : empty(`a ${here.piece.kind} stands on ${square}, and no ${kind}`),
  );
}
