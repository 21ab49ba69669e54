import { positionBudget } from '../../chess/index.ts';

/** `5,000,000 positions`: what a search may look at, as messages and the handbook name it. */
export const searchLimit = `${positionBudget.toLocaleString('en-US')} positions`;
