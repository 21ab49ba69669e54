import { settleLeftovers } from './leftovers.ts';
import { realOutput } from './real-output.ts';

/**
 * Finds a folder of output through links, and completes or undoes what a run that was killed left.
 * @returns its real path; it may not exist yet.
 * @throws OutputError as `realOutput` and `settleLeftovers` do.
 */
export async function settleOutput(out: string): Promise<string> {
  const real = await realOutput(out);
  await settleLeftovers(real);
  return real;
}
