import { sideToMove } from './board.ts';
import type { Position } from './types.ts';

/**
 * The board with the other side to move, as if the side to move had passed; no en-passant capture
 * is left. It need not be a position of a game: whoever passed may stand in check.
 */
export function passMove(position: Position): Position {
  const [placement, , rights, , clock, number] = position.fen.split(' ');
  const black = sideToMove(position) === 'black';
  const key = `${placement} ${black ? 'w' : 'b'} ${rights} -`;
  return { key, fen: `${key} ${Number(clock) + 1} ${Number(number) + (black ? 1 : 0)}` };
}
