import { positionBudget } from '../../chess/index.ts';

/** `5 million positions`: what a search may look at, as messages and the handbook name it. */
export const searchLimit = `${positionBudget / 1_000_000} million positions`;
