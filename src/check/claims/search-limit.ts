import { positionBudget } from '../../chess/index.ts';
import type { ClaimContext } from './define-claim.ts';

/** `5 million positions`: what a search may look at, as messages and the handbook name it. */
export const searchLimit = `${positionBudget / 1_000_000} million positions`;

/**
 * Positions that all searches of a course may look at, about two minutes: a hundred that find no end, or
 * thousands of mates in two and three.
 */
export const courseBudget = 100 * positionBudget;

/** Why a claim that needs a search stays undecided, once the searches before it have seen too much. */
export function whyNoSearch({ search }: ClaimContext): string | undefined {
  if (search === undefined || search.left > 0) return undefined;
  return `the searches of this course have seen ${courseBudget / 1_000_000} million positions, and no more are made`;
}
