/**
 * Numbers by which positions are told apart before a key is written: Zobrist, "A new hashing method",
 * 1970. Those of all cells, put together by exclusive or, are the number of a position.
 */
const signs = makeSigns();

/** The number of a cell of a `GameBoard` on a square; 0 where it is empty. */
export function signOf(cell: number, square: number): number {
  return signs[((cell + 6) << 7) | square] ?? 0;
}

function makeSigns(): Int32Array {
  let state = 1;
  // Xorshift (Marsaglia, 2003): the same numbers in every process.
  return Int32Array.from({ length: 13 * 128 }, (_, index) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return index >> 7 === 6 ? 0 : state;
  });
}
