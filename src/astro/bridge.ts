/**
 * What pages of the site ask of the integration while they are made. Both run in one process, but Vite loads the pages,
 * and a course is nothing that it could load: so the way leads over the global object.
 */

import type { HostedPage } from './rehouse.ts';
import { siteError } from './site-error.ts';

export interface Bridge {
  /** The pages of a course that have the site's layout: `undefined` for its contents, else the name of a chapter. */
  readonly pages: (course: number) => Promise<readonly (string | undefined)[]>;
  readonly page: (course: number, name: string | undefined) => Promise<HostedPage>;
}

const key = Symbol.for('linewright.astro');
const everywhere = globalThis as { [key]?: Bridge };

export function openBridge(bridge: Bridge): void {
  everywhere[key] = bridge;
}

/** @throws AstroUserError where the integration is not there. */
export function bridge(): Bridge {
  const found = everywhere[key];
  if (found !== undefined) return found;
  throw siteError(
    'a page asks for a course, and the integration is not there',
    'add `linewright()` to `integrations` in astro.config.mjs; a page that is made on a server must be prerendered',
  );
}
