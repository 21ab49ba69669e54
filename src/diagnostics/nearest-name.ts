import { distance } from 'fastest-levenshtein';

/**
 * The candidate that `name` is most probably a slip of, if one is near enough to suggest: at most
 * `most` edits away, by default about a third of its letters.
 */
export function nearestName(
  name: string,
  candidates: Iterable<string>,
  // Two edits are one swapped pair of letters, the most common slip.
  most = Math.max(name.length < 4 ? 1 : 2, Math.floor(name.length / 3)),
): string | undefined {
  let best: string | undefined;
  // A name of which nothing is left is no slip of another.
  let least = Math.min(most, name.length - 1) + 1;
  for (const candidate of candidates) {
    const edits = distance(name.toLowerCase(), candidate.toLowerCase());
    if (edits < least) {
      best = candidate;
      least = edits;
    }
  }
  return best;
}
