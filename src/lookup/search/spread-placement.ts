/** The first field of a FEN as a letter or a dot for each of the 64 squares, in the order of a FEN. */
export function spreadPlacement(placement: string): string {
  return placement.replaceAll('/', '').replace(/\d/g, (empty) => '.'.repeat(Number(empty)));
}
