/** The letters of the cells of a `GameBoard`: `letters[6 + cell]`. */
const letters = ['p', 'n', 'b', 'r', 'q', 'k', '', 'K', 'Q', 'R', 'B', 'N', 'P'];
const castlings = Array.from(
  { length: 16 },
  (_, rights) => [...'KQkq'].filter((_, bit) => rights & (1 << bit)).join('') || '-',
);

/** `Position.key` of the parts of a `GameBoard`; the en-passant square is given in its name. */
export function writeKey(
  cells: Int8Array,
  turn: number,
  rights: number,
  enPassant: string | undefined,
): string {
  // Joined and not added up letter by letter: V8 would keep such a text as a tree, thirty times as large.
  const ranks: string[] = [];
  for (let rank = 0x70; rank >= 0; rank -= 16) {
    let text = '';
    let empty = 0;
    for (let square = rank; square < rank + 8; square++) {
      const cell = cells[square] ?? 0;
      if (cell === 0) {
        empty++;
        continue;
      }
      if (empty > 0) text += empty;
      text += letters[6 + cell];
      empty = 0;
    }
    ranks.push(empty > 0 ? text + empty : text);
  }
  return [ranks.join('/'), turn > 0 ? 'w' : 'b', castlings[rights], enPassant ?? '-'].join(' ');
}
