import { distance } from 'fastest-levenshtein';

/** The longest name that is compared, in UTF-16 units: two long ones take their product of steps. */
const longest = 100;

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
  if (name.length > longest) return undefined;
  let best: string | undefined;
  // A name of which nothing is left is no slip of another.
  let least = Math.min(most, name.length - 1) + 1;
  for (const candidate of candidates) {
    // As many letters as they differ by in length have to be put in or taken out.
    if (Math.abs(candidate.length - name.length) >= least) continue;
    const edits = distance(name.toLowerCase(), candidate.toLowerCase());
    if (edits < least) {
      best = candidate;
      least = edits;
    }
  }
  return best;
}

/** Comparisons that are made for all names together: a thousand names with a thousand others. */
const mostCompared = 1_000_000;

/**
 * The same for many names and one list of candidates. Once too many have been compared no more are
 * suggested: a course with a thousand unknown names has no thousand slips.
 */
export function createSuggester(
  candidates: Iterable<string>,
): (name: string) => string | undefined {
  const known = [...candidates];
  const answers = new Map<string, string | undefined>();
  let compared = 0;
  return (name) => {
    if (answers.has(name)) return answers.get(name);
    compared += known.length;
    const answer = compared > mostCompared ? undefined : nearestName(name, known);
    answers.set(name, answer);
    return answer;
  };
}
