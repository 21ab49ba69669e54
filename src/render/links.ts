import { resolveFragment } from '../addresses/index.ts';
import {
  type Chapter,
  type Course,
  chapterAt,
  fileAddress,
  fileOfAddress,
} from '../model/index.ts';
import type { RenderContext } from './context.ts';
import type { Target } from './document.ts';

/** Addresses that a reader may be sent to by a link. */
const safeProtocols = /^(?:https?|mailto|tel):/i;
const anyProtocol = /^[a-z][a-z0-9+.-]*:/i;

/**
 * Where an author's link leads: `chapters/02-main.md#id`, as the reader resolved it, is a place in that
 * chapter. Nothing for a protocol that no link should have.
 */
export function targetOf({ course, chapter }: RenderContext, url: string): Target | undefined {
  if (anyProtocol.test(url)) {
    return safeProtocols.test(url) ? { to: 'web', address: url } : undefined;
  }
  const [, address = '', query = '', fragment] = /^([^?#]*)(\?[^#]*)?(?:#(.*))?$/s.exec(url) ?? [];
  const path = fileOfAddress(address);
  const there = address === '' ? chapter : chapterNamed(course, path);
  if (there !== undefined) {
    const wanted = fragment === undefined ? undefined : decoded(fragment);
    return {
      to: 'chapter',
      chapter: there.file,
      ...(query !== '' && { query }),
      ...(wanted !== undefined && { id: resolveFragment(there, wanted) ?? wanted }),
    };
  }
  if (!chapter.media.includes(path)) return { to: 'site', address: url };
  return { to: 'site', address: fileAddress(path) + url.slice(address.length) };
}

const known = new WeakMap<Course, ReadonlyMap<string, Chapter>>();

/** By its file, or by its page in the site, which an author may name as well. */
function chapterNamed(course: Course, path: string): Chapter | undefined {
  const byPage =
    known.get(course) ?? new Map(course.chapters.map((each) => [`${each.id}.html`, each]));
  known.set(course, byPage);
  return chapterAt(course, { chapter: path }) ?? byPage.get(path);
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
