import { chapterAt, fileAddress, fileOfAddress } from '../../model/index.ts';
import type { RenderContext } from './context.ts';

/** Addresses that a reader may be sent to by a link. */
const safeProtocols = /^(?:https?|mailto|tel):/i;
const anyProtocol = /^[a-z][a-z0-9+.-]*:/i;

/**
 * Where a Markdown link leads in the site: `chapters/02-main.md#id`, as the reader resolved it,
 * becomes the page of that chapter. `undefined` for a protocol that no link should have.
 */
export function siteHref(
  { course, chapter, addresses }: RenderContext,
  url: string,
): string | undefined {
  if (anyProtocol.test(url)) return safeProtocols.test(url) ? url : undefined;
  const [, address = '', rest = ''] = /^([^?#]*)(.*)$/s.exec(url) ?? [];
  const path = fileOfAddress(address);
  if (chapterAt(course, { chapter: path })) return addresses.page(path) + rest;
  return chapter.media.includes(path) ? fileAddress(path) + rest : url;
}
