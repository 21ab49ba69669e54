import { sanIn } from '../../chess/letters.ts';
import { listMoves } from '../../chess/rules.ts';
import type { Position } from '../../chess/types.ts';
import { positionAddress, readPositionAddress } from '../../contract/position-address.ts';
import type { ChapterWords } from '../../contract/words.ts';
import type { BoardMove } from '../board/board-state.ts';
import type { Spot } from '../spots.ts';

/** The position of a place in the text; absent for a board that is no legal position. */
export function positionOf(spot: Spot, spots: ReadonlyMap<Element, Spot>): Position | undefined {
  const key = readPositionAddress(spot.address)?.key;
  if (key === undefined) return undefined;
  // The half-move clock is unknown and affects no move.
  return { key, fen: `${key} 0 ${numberAfter(spot, spots)}` };
}

/** The number of the move that is played next: of a diagram, as a move of the text that leads there tells it. */
function numberAfter({ address, move, children }: Spot, spots: ReadonlyMap<Element, Spot>): number {
  const led =
    move ?? [...spots.values()].find((other) => other.address === address && other.move)?.move;
  if (led === undefined) return children[0]?.move?.number ?? 1;
  return led.color === 'black' ? led.number + 1 : led.number;
}

/** The moves that can be played, as a board takes them. */
export function movesIn(position: Position, { letters }: ChapterWords): BoardMove[] {
  return listMoves(position).map(({ san, from, to, promotion }) => ({
    san: sanIn(letters, san),
    from,
    to,
    promotion,
  }));
}

/**
 * The place that the text goes on with, where it has the move that leads to a position: in the same line, else
 * wherever another line of the page has it from the same position.
 */
export function childWith(
  spot: Spot,
  spots: ReadonlyMap<Element, Spot>,
  { key }: Position,
): Spot | undefined {
  const address = positionAddress(key);
  const isIt = (child: Spot) => child.address === address;
  const here = spot.children.find(isIt);
  if (here !== undefined) return here;
  const from = spot.address;
  return [...spots.values()].find((other) => isIt(other) && other.parent?.address === from);
}
