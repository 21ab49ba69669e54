import type { Addresses, SharedContext } from '../../render/index.ts';

/** What the pages of a site have in common. */
export interface SiteContext extends SharedContext {
  readonly addresses: Addresses;
}
