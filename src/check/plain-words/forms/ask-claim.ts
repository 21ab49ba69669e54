/** Statements that a claim can make are judged by that claim. */
import { isClaimFault, parseClaim } from '../../claims/index.ts';
import type { Situation, StatementVerdict } from './form.ts';

/** So many positions a search may look at for a sentence: mates in two, and most in three. */
const searchBudget = 50_000;

/** What a claim's own judge says of it; nothing where a search was stopped. */
export function askClaim(text: string, situation: Situation): StatementVerdict | undefined {
  const claim = parseClaim(text);
  if (isClaimFault(claim)) throw new RangeError(`${text}: ${claim.reason}`);
  let because = '';
  for (const part of claim.parts) {
    const verdict = part.judge({
      position: situation.position,
      side: situation.side,
      covered: situation.covered(),
      castlings: situation.castlings,
      labelled: () => undefined,
      searchBudget,
    });
    if (verdict.holds === 'undecided') return undefined;
    because = verdict.because;
    if (verdict.holds !== !part.denied) return { holds: false, because };
  }
  return { holds: true, because, claim: text };
}

/** The first of some answers that holds, else the first that there is. */
export function anyOf(
  answers: Iterable<StatementVerdict | undefined>,
): StatementVerdict | undefined {
  let first: StatementVerdict | undefined;
  for (const answer of answers) {
    if (answer?.holds) return answer;
    first ??= answer;
  }
  return first;
}
