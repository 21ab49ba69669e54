import { diffArrays } from 'diff';

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
function common(before: readonly string[], after: readonly string[]) {
  let [a, b] = [0, 0];
  return diffArrays([...before], [...after]).flatMap(({ count, added, removed }) => {
    if (removed) a += count;
    else if (added) b += count;
    else return Array.from({ length: count }, () => [a++, b++] as const);
    return [];
  });
}
