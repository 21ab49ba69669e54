import type { Element, ElementContent } from 'hast';
import { element } from '../../render/index.ts';
import type { Strings } from '../../strings/index.ts';

export interface ContentsEntry {
  readonly href: string;
  readonly title: string;
  readonly parts: readonly { readonly href: string; readonly title: string }[];
}

/** The body of the navigation document (EPUB 3.3, section 7): it is also the page of contents. */
export function makeNavigation(
  strings: Strings,
  chapters: readonly ContentsEntry[],
  landmarks: readonly { readonly href: string; readonly type: string; readonly title: string }[],
): ElementContent[] {
  const link = (href: string, title: string, more = {}) => element('a', { href, ...more }, [title]);
  const list = (items: readonly (readonly ElementContent[])[]): Element =>
    element(
      'ol',
      {},
      items.map((item) => element('li', {}, item)),
    );
  const contents = chapters.map(({ href, title, parts }) => [
    link(href, title),
    ...(parts.length > 0 ? [list(parts.map((part) => [link(part.href, part.title)]))] : []),
  ]);
  return [
    element('nav', { 'epub:type': 'toc', role: 'doc-toc', id: 'contents' }, [
      element('h1', {}, [strings.contents]),
      list(contents),
    ]),
    element('nav', { 'epub:type': 'landmarks', hidden: true, id: 'landmarks' }, [
      element('h2', {}, [strings.book.landmarks]),
      list(landmarks.map(({ href, type, title }) => [link(href, title, { 'epub:type': type })])),
    ]),
  ];
}
