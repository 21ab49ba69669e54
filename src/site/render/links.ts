import type { Place } from '../../diagnostics/place.ts';
import { SiteError } from '../site-error.ts';
import type { RenderContext } from './context.ts';

/** Addresses that a reader may be sent to by a link. */
const safeProtocols = /^(?:https?|mailto|tel):/i;
const anyProtocol = /^[a-z][a-z0-9+.-]*:/i;

/**
 * Where a Markdown link leads in the site: `02-main.md#id`, relative to the chapter's file,
 * becomes the page of that chapter. `undefined` for a protocol that no link should have.
 * @throws SiteError for a `.md` file that is no chapter.
 */
export function siteHref(
  { course, chapter, addresses }: RenderContext,
  url: string,
  place: Place,
): string | undefined {
  if (anyProtocol.test(url)) return safeProtocols.test(url) ? url : undefined;
  const [, path = '', rest = ''] = /^([^?#]*)(.*)$/s.exec(url) ?? [];
  if (!/\.md$/i.test(path)) return url;
  const file = resolveFrom(chapter.file, decodeURIComponent(path));
  const target = course.chapters.find((other) => other.file === file);
  if (target === undefined) {
    throw new SiteError(
      `the link leads to "${url}", and no chapter of the course is ${file}`,
      `link to one of: ${course.chapters.map((other) => other.file).join(', ')}`,
      place,
    );
  }
  return addresses.page(target.index) + rest;
}

/** A relative path as seen from a file, relative to the course folder. */
function resolveFrom(file: string, path: string): string {
  const parts = path.startsWith('/') ? [] : file.split('/').slice(0, -1);
  for (const part of path.split('/')) {
    if (part === '..') parts.pop();
    else if (part !== '.' && part !== '') parts.push(part);
  }
  return parts.join('/');
}
