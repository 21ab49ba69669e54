import { readHandbookAddress, UserError } from '../diagnostics/index.ts';
import { packageFile } from './package-version.ts';

/** The variable of the environment that names a published handbook. */
const handbookVariable = 'LINEWRIGHT_HANDBOOK';

/**
 * The address that the handbook is published at, which ends with `/`: as the environment names it, else the
 * `homepage` of this package. Undefined where there is none, since no address is made up.
 * @throws UserError for one that is no address.
 */
export function handbookAddress(
  named: string | undefined = process.env[handbookVariable],
  homepage: string | undefined = packageFile().homepage,
): string | undefined {
  const text = named || homepage;
  if (text === undefined) return undefined;
  const address = readHandbookAddress(text);
  if (address !== undefined) return address;
  throw new UserError(
    `the handbook's address in ${handbookVariable} is no address: ${text}`,
    'write it in full, as in https://example.org/handbook/',
  );
}
