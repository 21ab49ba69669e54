/**
 * What pages of the site ask of the integration while they are made. Both run in one process, but Vite loads the pages,
 * and a course is nothing that it could load: so the way leads over the global object.
 */

import type { ComponentName, ComponentProps } from './component-source.ts';
import type { HostedPage } from './rehouse.ts';
import { siteError } from './site-error.ts';

export interface Bridge {
  /** The pages of a course that have the site's layout: `undefined` for its contents, else the name of a chapter. */
  readonly pages: (course: number) => Promise<readonly (string | undefined)[]>;
  readonly page: (course: number, name: string | undefined) => Promise<HostedPage>;
  /** The HTML of a component; `page` is the same object for all components of a page. */
  readonly component: (name: ComponentName, props: ComponentProps, page: object) => Promise<string>;
  /** The path that the course in a folder is served at. */
  readonly rootOf: (folder: string) => string | undefined;
}

const key = Symbol.for('linewright.astro');
const everywhere = globalThis as { [key]?: Bridge };

export function openBridge(bridge: Bridge): void {
  everywhere[key] = bridge;
}

/** The path that the course in a folder is served at, where the integration has it. */
export function rootOf(folder: string): string | undefined {
  return everywhere[key]?.rootOf(folder);
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
