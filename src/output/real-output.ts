import { lstat, realpath } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { ignoreMissing } from './error-code.ts';
import { OutputError } from './output-error.ts';

/**
 * The real path of what need not exist: that of its nearest folder that does, and the rest.
 * @throws OutputError for a link that leads nowhere.
 */
export async function realOutput(out: string): Promise<string> {
  const full = resolve(out);
  const real = await realpath(full).catch(ignoreMissing);
  if (real !== undefined) return real;
  if (await lstat(full).catch(ignoreMissing)) {
    throw new OutputError(
      `${out} is a link that leads nowhere`,
      'make the folder that it leads to, or name another one with --out',
    );
  }
  const parent = dirname(full);
  return parent === full ? full : join(await realOutput(parent), basename(full));
}
