import { resolveFragment } from '../../addresses/index.ts';
import { decodeAddress, fileAddress } from '../../model/index.ts';
import type { RenderContext } from '../context.ts';
import type { Target } from '../document.ts';

/** The protocols that a link may have. */
const safeProtocols = /^(?:https?|mailto|tel):/i;
const anyProtocol = /^[a-z][a-z0-9+.-]*:/i;

/**
 * The target of an author's link; `read` has resolved it, so `chapters/02-main.md#id` is a place in that chapter.
 * Undefined for an unsafe protocol.
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

/** A target within the chapter itself, which may not be part of the course, as news is not. */
function within(chapter: RenderContext['chapter'], wanted: string | undefined) {
  const { file } = chapter;
  return wanted === undefined ? { file } : { file, id: resolveFragment(chapter, wanted) ?? wanted };
}
