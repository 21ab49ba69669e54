import {
  attacksFrom,
  type Board,
  between,
  type Piece,
  type Square,
  slides,
} from '../../chess/index.ts';

/** A piece, and where it stands on the board that is shown. */
export interface Mover {
  readonly piece: Piece;
  readonly home: Square;
}

/** Why a piece covers a square neither at once nor through one piece; absent where it does. */
export function whyNotCovered(
  { piece, home }: Mover,
  from: Square,
  to: Square,
  board: Board,
): string | undefined {
  const name = `the ${piece.kind} on ${from}`;
  if (!attacksFrom(new Map([[from, piece]]), from).includes(to)) {
    return `${name} does not attack ${to}, as far as its way of moving goes`;
  }
  if (!slides(piece)) return undefined;
  const inTheWay = (between(from, to) ?? []).filter(
    (square) => square !== home && board.has(square),
  );
  return inTheWay.length > 1
    ? `${inTheWay.length} pieces stand between ${from} and ${to}, and an arrow goes through one at most`
    : undefined;
}
