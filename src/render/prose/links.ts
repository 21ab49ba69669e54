import { resolveFragment } from '../../addresses/index.ts';
import { decodeAddress, fileAddress } from '../../model/index.ts';
import type { RenderContext } from '../context.ts';
import type { Target } from '../document.ts';

/** Addresses that a reader may be sent to by a link. */
const safeProtocols = /^(?:https?|mailto|tel):/i;
const anyProtocol = /^[a-z][a-z0-9+.-]*:/i;

/**
 * Where an author's link leads: `chapters/02-main.md#id`, as the reader resolved it, is a place in that
 * chapter. Nothing for a protocol that no link should have.
 */
export function targetOf({ ask, chapter }: RenderContext, url: string): Target | undefined {
  if (anyProtocol.test(url)) {
    return safeProtocols.test(url) ? { to: 'web', address: url } : undefined;
  }
  const [, address = '', query = '', fragment] = /^([^?#]*)(\?[^#]*)?(?:#(.*))?$/s.exec(url) ?? [];
  const path = decodeAddress(address);
  const wanted = fragment === undefined ? undefined : decodeAddress(fragment);
  const there = address === '' ? within(chapter, wanted) : ask('link', { path, fragment: wanted });
  if (there !== null) {
    const { file, id } = there;
    return {
      to: 'chapter',
      chapter: file,
      ...(query !== '' && { query }),
      ...(id !== undefined && { id }),
    };
  }
  if (!chapter.media.includes(path)) return { to: 'site', address: url };
  return { to: 'site', address: fileAddress(path) + url.slice(address.length) };
}

/** A place of the chapter itself, which may be one that the course has not, such as news. */
function within(chapter: RenderContext['chapter'], wanted: string | undefined) {
  const { file } = chapter;
  return wanted === undefined ? { file } : { file, id: resolveFragment(chapter, wanted) ?? wanted };
}
