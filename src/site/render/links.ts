import { resolveFragment } from '../../addresses/index.ts';
import { type Chapter, chapterAt, fileAddress, fileOfAddress } from '../../model/index.ts';
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
  const there = chapterAt(course, { chapter: path });
  if (there) return addresses.page(path) + currentPlace(there, rest);
  if (address === '') return currentPlace(chapter, rest);
  return chapter.media.includes(path) ? fileAddress(path) + rest : url;
}

/** What follows a page's name, with the id that its place has now. */
function currentPlace(chapter: Chapter, rest: string): string {
  const [, query = '', written] = /^([^#]*)(?:#(.*))?$/s.exec(rest) ?? [];
  if (written === undefined) return rest;
  const found = resolveFragment(chapter, decoded(written));
  return `${query}#${found === undefined ? written : encodeURIComponent(found)}`;
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
