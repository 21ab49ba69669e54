import { multiple } from '../../../../tests/setup/runs.ts';
import type { ClaimContext } from '../define-claim.ts';

/**
 * Every mate of the examples is found long before this; only the endless search of one example
 * comes to its end, which takes seconds with the usual budget, and is done with it at night.
 */
export const searchBudget: Pick<ClaimContext, 'searchBudget'> =
  multiple > 1 ? {} : { searchBudget: 100_000 };
