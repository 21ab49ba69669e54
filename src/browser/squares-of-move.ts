import type { Color, Square } from '../chess/types.ts';
import { readPlacement } from '../draw/placement.ts';

/** From where to where a move went. */
export interface SquaresOfMove {
  readonly from: Square;
  readonly to: Square;
}

/**
 * The squares of a move, found by the placements before and after it: what the mover's side left, and
 * what it came to. Of castling they are the king's.
 */
export function squaresOfMove(before: string, after: string, mover: Color): SquaresOfMove {
  const [old, now] = [piecesOf(before, mover), piecesOf(after, mover)];
  const left = [...old].filter(([square, kind]) => now.get(square) !== kind);
  const reached = [...now].filter(([square, kind]) => old.get(square) !== kind);
  const of = (changed: readonly (readonly [Square, string])[]) =>
    (changed.find(([, kind]) => kind === 'king') ?? changed[0])?.[0] ?? '';
  return { from: of(left), to: of(reached) };
}

function piecesOf(placement: string, color: Color): ReadonlyMap<Square, string> {
  return new Map(
    readPlacement(placement)
      .filter(({ piece }) => piece.color === color)
      .map(({ square, piece }) => [square, piece.kind]),
  );
}
