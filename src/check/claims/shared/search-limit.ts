import { positionBudget } from '../../../chess/index.ts';
import type { ClaimContext } from '../define-claim.ts';

/** `5 million positions`: what a search may look at, as messages and the handbook name it. */
export const searchLimit = `${positionBudget / 1_000_000} million positions`;

/**
 * Positions that all searches of a chapter may look at, about half a minute: twenty that find no end, or
 * hundreds of mates in two and three. It is a chapter's, so that one that is kept takes nothing from others.
 */
export const chapterBudget = 20 * positionBudget;

/** Why a claim that needs a search stays undecided, once the searches before it have seen too much. */
export function whyNoSearch({ search }: ClaimContext): string | undefined {
  if (search === undefined || search.left > 0) return undefined;
  return `the searches of this chapter have seen ${chapterBudget / 1_000_000} million positions, and no more are made`;
}
