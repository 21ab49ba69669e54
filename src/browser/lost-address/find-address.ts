import { type PieceLetters, sanIn } from '../../chess/letters.ts';
import {
  readEarlierAddress,
  readPositionAddress,
  sanInEarlierAddress,
  squaresApart,
} from '../../contract/position-address.ts';

/** What of a place in the page its address depends on: of a move, or of the start of a block. */
export interface AddressedPlace {
  /** The address of its position. */
  readonly address: string;
  readonly placement: string;
  /** From 1, all blocks of the chapter counted. */
  readonly block: number;
  /** Whether it stands in the main line of its block. */
  readonly isMain: boolean;
  /** Absent for the start of a block. */
  readonly move:
    | { readonly number: number; readonly color: 'white' | 'black'; readonly san: string }
    | undefined;
}

/** A place for an address that no element of the page has as its id. */
export interface FoundPlace<Place> {
  readonly place: Place;
  /** Whether it is what the address names, or only the nearest that is left. */
  readonly isGone: boolean;
}

/**
 * Finds what an address names: the position, wherever the page shows it now; else the position on whose
 * board the fewest squares differ. An address of an earlier edition names a block and a move.
 * Nothing for an address that names neither.
 * @param letters of the pieces, as the page prints moves.
 */
export function findAddress<Place extends AddressedPlace>(
  id: string,
  places: readonly Place[],
  letters: PieceLetters,
): FoundPlace<Place> | undefined {
  const addressed = readPositionAddress(id);
  if (addressed !== undefined) {
    const same = places.find(({ address }) => address === addressed.plain);
    const apart = (place: Place) => squaresApart(place.placement, addressed.placement);
    const place = same ?? leastOf(places, apart);
    return place && { place, isGone: same === undefined };
  }
  const earlier = readEarlierAddress(id);
  if (earlier === undefined) return undefined;
  const { block, move } = earlier;
  const blocksApart = (place: Place) => Math.abs(place.block - block);
  if (move === undefined) {
    const place = leastOf(
      places.filter((each) => each.move === undefined),
      blocksApart,
    );
    return place && { place, isGone: place.block !== block };
  }
  const san = sanIn(letters, move.san);
  const isSame = (made: AddressedPlace['move']) =>
    made?.number === move.number &&
    made.color === move.color &&
    sanInEarlierAddress(made.san) === san;
  const same = leastOf(
    places.filter((each) => isSame(each.move)),
    blocksApart,
  );
  if (same !== undefined) return { place: same, isGone: false };
  // The line as far as that move, in the block with moves that is left nearest to the one of the address.
  const withMoves = new Set(places.flatMap((each) => (each.move ? [each.block] : [])));
  const before = places.filter(
    (each) => each.isMain && withMoves.has(each.block) && plyOf(each.move) <= plyOf(move),
  );
  const nearest = leastOf(before, blocksApart)?.block;
  const place = before.findLast((each) => each.block === nearest);
  return place && { place, isGone: true };
}

function leastOf<Item>(items: readonly Item[], measure: (item: Item) => number): Item | undefined {
  let least: Item | undefined;
  let size = Number.POSITIVE_INFINITY;
  for (const item of items) {
    const measured = measure(item);
    if (measured >= size) continue;
    least = item;
    size = measured;
  }
  return least;
}

function plyOf(move: { readonly number: number; readonly color: string } | undefined): number {
  return move === undefined ? 0 : 2 * move.number + (move.color === 'white' ? 0 : 1);
}
