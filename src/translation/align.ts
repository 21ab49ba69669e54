/** Which items of two lists belong together; `undefined` where one list lacks what the other has. */
export type Pair = readonly [before: number | undefined, after: number | undefined];

/**
 * Aligns two lists: equal items by a longest common subsequence, and between those what is of one kind, in order.
 */
export function align<Item>(
  before: readonly Item[],
  after: readonly Item[],
  keyOf: (item: Item) => string,
  kindOf: (item: Item) => string,
): Pair[] {
  const same = common(before.map(keyOf), after.map(keyOf));
  const pairs: Pair[] = [];
  let [a, b] = [0, 0];
  for (const [nextA, nextB] of [...same, [before.length, after.length] as const]) {
    const inner = common(before.slice(a, nextA).map(kindOf), after.slice(b, nextB).map(kindOf)).map(
      ([x, y]) => [x + a, y + b] as const,
    );
    for (const [endA, endB] of [...inner, [nextA, nextB] as const]) {
      while (a < endA) pairs.push([a++, undefined]);
      while (b < endB) pairs.push([undefined, b++]);
      if (endA < before.length && endB < after.length) pairs.push([a++, b++]);
    }
  }
  return pairs;
}

/** The pairs of indices of a longest common subsequence. */
function common(a: readonly string[], b: readonly string[]): (readonly [number, number])[] {
  const pairs: (readonly [number, number])[] = [];
  let start = 0;
  while (start < a.length && start < b.length && a[start] === b[start]) {
    pairs.push([start, start]);
    start++;
  }
  let end = 0;
  while (
    end < a.length - start &&
    end < b.length - start &&
    a[a.length - 1 - end] === b[b.length - 1 - end]
  ) {
    end++;
  }
  pairs.push(...commonInside(a, b, start, end));
  for (let left = end; left > 0; left--) pairs.push([a.length - left, b.length - left]);
  return pairs;
}

function commonInside(a: readonly string[], b: readonly string[], start: number, end: number) {
  const [rows, columns] = [a.length - end - start, b.length - end - start];
  const width = columns + 1;
  const longest = new Uint32Array((rows + 1) * width);
  const at = (row: number, column: number) => longest[row * width + column] ?? 0;
  for (let row = rows - 1; row >= 0; row--) {
    for (let column = columns - 1; column >= 0; column--) {
      longest[row * width + column] =
        a[start + row] === b[start + column]
          ? at(row + 1, column + 1) + 1
          : Math.max(at(row + 1, column), at(row, column + 1));
    }
  }
  const pairs: (readonly [number, number])[] = [];
  let [row, column] = [0, 0];
  while (row < rows && column < columns) {
    if (a[start + row] === b[start + column]) pairs.push([start + row++, start + column++]);
    else if (at(row + 1, column) >= at(row, column + 1)) row++;
    else column++;
  }
  return pairs;
}
