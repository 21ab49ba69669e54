import { type Course, fileAddress, fileOfAddress } from '../../model/index.ts';
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
  const target = indicesOf(course).get(path);
  if (target !== undefined) return addresses.page(target) + rest;
  return chapter.media.includes(path) ? fileAddress(path) + rest : url;
}

const known = new WeakMap<Course, ReadonlyMap<string, number>>();

/** The indices of the chapters by their files. */
function indicesOf(course: Course): ReadonlyMap<string, number> {
  const indices = known.get(course) ?? new Map(course.chapters.map((c) => [c.file, c.index]));
  known.set(course, indices);
  return indices;
}
