/**
 * Compares file names as people order them: numbers by their value, so that `2.md` comes before `10.md`, all
 * else by its characters. Not `localeCompare`: the order must be the same on every machine.
 */
export function compareNames(one: string, other: string): number {
  const [ours, theirs] = [partsOf(one), partsOf(other)];
  for (const [index, part] of ours.entries()) {
    const there = theirs[index];
    if (there === undefined) return 1;
    const order = isNumber(part) && isNumber(there) ? compareNumbers(part, there) : 0;
    if (order !== 0) return order;
    // Equal numbers may differ in their zeros, which decide only where nothing else does.
    if (!(isNumber(part) && isNumber(there)) && part !== there) return part < there ? -1 : 1;
  }
  if (theirs.length > ours.length) return -1;
  return one < other ? -1 : one > other ? 1 : 0;
}

function partsOf(name: string): readonly string[] {
  return name.match(/\d+|\D+/g) ?? [];
}

function isNumber(part: string): boolean {
  return /^\d/.test(part);
}

/** Digits without their zeros in front: the longer number is the greater. */
function compareNumbers(one: string, other: string): number {
  const [ours, theirs] = [one, other].map((digits) => digits.replace(/^0+/, ''));
  if (ours === undefined || theirs === undefined || ours === theirs) return 0;
  if (ours.length !== theirs.length) return ours.length - theirs.length;
  return ours < theirs ? -1 : 1;
}
