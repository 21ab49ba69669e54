import { checkOutput } from './check-output.ts';
import { settleOutput } from './settle-output.ts';

/**
 * Makes sure that a run may write to a folder, before the run does any work: mends what an earlier run
 * left, and refuses what must not be replaced.
 * @param course folder of the course, if the output is made of one.
 * @returns real path of the folder, which may not exist yet.
 * @throws OutputError as `settleOutput` and `checkOutput` do.
 */
export async function prepareOutput(out: string, course?: string): Promise<string> {
  const real = await settleOutput(out);
  await checkOutput(out, real, course);
  return real;
}
