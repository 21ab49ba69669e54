import { distance } from 'fastest-levenshtein';

/** The candidate that `name` is most probably a slip of, if one is near enough to suggest. */
export function nearestName(name: string, candidates: Iterable<string>): string | undefined {
  let best: string | undefined;
  let least = Math.max(1, Math.floor(name.length / 3)) + 1;
  for (const candidate of candidates) {
    const edits = distance(name.toLowerCase(), candidate.toLowerCase());
    if (edits < least) {
      best = candidate;
      least = edits;
    }
  }
  return best;
}
