/** Comparisons at most: of longer lists only the common ends are aligned. */
const mostCompared = 250_000;

/**
 * Aligns two lists, as a diff does.
 * @returns for each item of the second the index of the same one in the first, rising; undefined if there is none.
 */
export function alignLists(
  before: readonly string[],
  after: readonly string[],
): (number | undefined)[] {
  const same: (number | undefined)[] = after.map(() => undefined);
  let start = 0;
  while (start < before.length && start < after.length && before[start] === after[start]) {
    same[start] = start;
    start++;
  }
  let end = 0;
  while (
    end < Math.min(before.length, after.length) - start &&
    before.at(-1 - end) === after.at(-1 - end)
  ) {
    same[after.length - 1 - end] = before.length - 1 - end;
    end++;
  }
  const left = before.slice(start, before.length - end);
  const right = after.slice(start, after.length - end);
  if (left.length * right.length > mostCompared) return same;
  for (const [i, j] of longestCommon(left, right)) same[start + j] = start + i;
  return same;
}

/** The pairs of a longest common subsequence. */
function longestCommon(left: readonly string[], right: readonly string[]): [number, number][] {
  const width = right.length + 1;
  const lengths = new Uint32Array((left.length + 1) * width);
  const at = (i: number, j: number) => lengths[i * width + j] ?? 0;
  for (let i = left.length - 1; i >= 0; i--) {
    for (let j = right.length - 1; j >= 0; j--) {
      lengths[i * width + j] =
        left[i] === right[j] ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
    }
  }
  const pairs: [number, number][] = [];
  let i = 0;
  let j = 0;
  while (i < left.length && j < right.length) {
    if (left[i] === right[j]) pairs.push([i++, j++]);
    else if (at(i + 1, j) >= at(i, j + 1)) i++;
    else j++;
  }
  return pairs;
}
