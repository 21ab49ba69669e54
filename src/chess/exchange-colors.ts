import { sideToMove } from './board.ts';
import type { Position } from './types.ts';

/**
 * The same position with the colours exchanged and the board turned upside down: what was White's is Black's, and
 * `d4` is `d5`.
 */
export function exchangeColors({ fen }: Pick<Position, 'fen'>): Position {
  const [placement = '', , rights = '-', enPassant = '-', clock, number] = fen.split(' ');
  const turn = sideToMove({ key: fen }) === 'white' ? 'b' : 'w';
  const rows = placement.split('/').reverse().map(swapCase);
  // The standard's order: White's rights first.
  const swapped = swapCase(rights);
  const castling = [...'KQkq'].filter((letter) => swapped.includes(letter)).join('') || '-';
  const key = `${rows.join('/')} ${turn} ${castling} ${exchangeRanks(enPassant)}`;
  return { key, fen: `${key} ${clock ?? 0} ${number ?? 1}` };
}

/** A square, or a move in SAN, as it is with the colours exchanged. */
export function exchangeRanks(text: string): string {
  return text.replace(/[1-8]/g, (rank) => String(9 - Number(rank)));
}

function swapCase(text: string): string {
  return text.replace(/[a-z]/gi, (letter) =>
    letter === letter.toLowerCase() ? letter.toUpperCase() : letter.toLowerCase(),
  );
}
