import { beginReplacement } from './begin-replacement.ts';

/**
 * Puts the folder `made` in the place of `out`. The old output stands whole until the new one is whole
 * beside it, with all that no run wrote; then two moves exchange them.
 * @param out real path, as `prepareOutput` gives it.
 * @param unchanged files of the old output, relative to it, that belong to the new one as they are.
 * @returns the paths of what was kept of the old output.
 * @throws OutputError for what the user can mend.
 */
export async function replaceFolder(
  made: string,
  out: string,
  unchanged: Iterable<string> = [],
): Promise<readonly string[]> {
  const replacement = await beginReplacement(out);
  try {
    await replacement.put(made, '', unchanged);
    return await replacement.replace();
  } finally {
    await replacement.end();
  }
}
