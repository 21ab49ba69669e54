import type { PageData, PageName } from '../../site-data.ts';
import type { RenderedSite, SitePage } from '../rendered-site.ts';

/** What the pages of a site of this name show, in their order. */
export function shownOn<Name extends PageName>({ pages }: RenderedSite, name: Name) {
  const isNamed = (page: SitePage): page is SitePage<Name> => page.name === name;
  return pages.filter(isNamed).map((page): PageData[Name] => page.data());
}
