import type { Element, ElementContent } from 'hast';
import { toXast } from 'hast-util-to-xast';
import { element, writeXml } from '../../render/index.ts';
import { directionOf } from '../../strings/index.ts';

/** A page of the book: an XHTML content document (EPUB 3.3, section 6.1), one folder deep. */
export function makeXhtml(
  page: { readonly language: string; readonly title: string },
  body: readonly ElementContent[],
): string {
  const head = element('head', {}, [
    element('title', {}, [page.title]),
    element('link', { rel: ['stylesheet'], type: 'text/css', href: '../book.css' }, []),
  ]);
  const html: Element = element(
    'html',
    {
      'xmlns:epub': 'http://www.idpf.org/2007/ops',
      lang: page.language,
      'xml:lang': page.language,
      dir: directionOf(page.language),
    },
    [head, element('body', {}, body)],
  );
  return writeXml(toXast({ type: 'root', children: [{ type: 'doctype' }, html] }));
}
