import { checkInside, checkOutput } from './check-output.ts';
import { settleOutput } from './settle-output.ts';

/**
 * Makes sure that a run may write to a folder, before the run does any work: mends what an earlier run
 * left, and refuses what must not be replaced.
 * @param course folder of the course, if the output is made of one.
 * @param isDefault whether the user named no folder: a link in the course then leads nowhere else.
 * @param more paths in that folder that must not be replaced either.
 * @returns real path of the folder, which may not exist yet.
 * @throws OutputError as `settleOutput` and `checkOutput` do.
 */
export async function prepareOutput(
  out: string,
  course?: string,
  isDefault = false,
  more: readonly string[] = [],
): Promise<string> {
  if (course !== undefined && isDefault) await checkInside(out, course);
  const real = await settleOutput(out);
  await checkOutput(out, real, course, more);
  return real;
}
