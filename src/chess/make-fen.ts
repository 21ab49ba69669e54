/** Writes the FEN that the PGN standard asks for. */
import { pieceAt } from './board.ts';
import { fileOf, rankOf, squareAt } from './squares.ts';
import type { PlayedMove } from './types.ts';

/**
 * The FEN of the position after a move, by the PGN standard, 16.1.3.4: the square that a pawn
 * has passed over in a double step is named whether or not a capture there is possible. The
 * FEN of a `Position` names it only where the capture is legal, for it tells positions apart.
 */
export function makeFen({ after, from, to }: PlayedMove): string {
  const double = pieceAt(after, to)?.kind === 'pawn' && Math.abs(rankOf(to) - rankOf(from)) === 2;
  const passed = double ? squareAt(fileOf(to), (rankOf(from) + rankOf(to)) / 2) : undefined;
  if (passed === undefined) return after.fen;
  const fields = after.fen.split(' ');
  fields[3] = passed;
  return fields.join(' ');
}
