import { diffArrays } from 'diff';

/** Lists that differ by more are not compared: the page would stand still meanwhile. */
const maxEditLength = 500;

/** @returns for each item of the second list the index of the same one in the first, rising; undefined if there is none. */
export function alignLists(
  before: readonly string[],
  after: readonly string[],
): (number | undefined)[] {
  const changes = diffArrays([...before], [...after], { maxEditLength });
  if (changes === undefined) return after.map(() => undefined);
  let at = 0;
  return changes.flatMap(({ count, added, removed }) => {
    const start = at;
    if (!added) at += count;
    if (removed) return [];
    return Array.from({ length: count }, (_, index) => (added ? undefined : start + index));
  });
}
