import { distance } from 'fastest-levenshtein';

/** The candidate that `name` is most probably a slip of, if one is near enough to suggest. */
export function nearestName(name: string, candidates: Iterable<string>): string | undefined {
  let best: string | undefined;
  // Two edits are one swapped pair of letters, the most common slip.
  let least = Math.max(name.length < 4 ? 1 : 2, Math.floor(name.length / 3)) + 1;
  for (const candidate of candidates) {
    const edits = distance(name.toLowerCase(), candidate.toLowerCase());
    if (edits < least) {
      best = candidate;
      least = edits;
    }
  }
  return best;
}
