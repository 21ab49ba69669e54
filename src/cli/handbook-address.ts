import { readHandbookAddress, UserError } from '../diagnostics/index.ts';
import { packageFile } from './package-version.ts';

/** Environment variable with the address of a published handbook. */
const handbookVariable = 'LINEWRIGHT_HANDBOOK';

/**
 * The address of the published handbook, ending with `/`: from the environment, else the `homepage` of this package.
 * Undefined without either: no address is made up.
 * @throws UserError for an invalid address.
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
