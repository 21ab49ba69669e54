import type { Element } from 'xast';
import { x } from 'xastscript';
import { writeXml } from '../../render/index.ts';

/** A file of the book; `path` is relative to the package document. */
export interface BookItem {
  readonly path: string;
  readonly type: string;
  readonly properties?: 'nav' | 'cover-image';
  /** Whether it is read in its turn; else it only serves the pages. */
  readonly inSpine?: boolean;
}

export interface BookMetadata {
  /** A URN. */
  readonly identifier: string;
  readonly title: string;
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  readonly author?: string | undefined;
  readonly summary?: string | undefined;
  readonly licence?: string | undefined;
  readonly modified: Date;
  /** The day of the edition, where one is known. */
  readonly published?: Date | undefined;
  /** Who vouches for its accessibility. */
  readonly certified?: string | undefined;
  /** Whether every picture has an alternative text, so that all can be read without seeing. */
  readonly described: boolean;
  readonly accessibility: string;
}

/** The package document: metadata, manifest and reading order (EPUB 3.3, section 5). */
export function makePackage(book: BookMetadata, items: readonly BookItem[]): string {
  const ids = new Map(items.map(({ path }, index) => [path, `item-${index + 1}`]));
  const idOf = (item: BookItem) => ids.get(item.path);
  return writeXml(
    x(null, [
      x(
        'package',
        {
          xmlns: 'http://www.idpf.org/2007/opf',
          version: '3.0',
          'unique-identifier': 'book-id',
          'xml:lang': book.language,
          dir: book.direction,
        },
        [
          x('metadata', { 'xmlns:dc': 'http://purl.org/dc/elements/1.1/' }, metadata(book)),
          x(
            'manifest',
            items.map((item) =>
              x('item', {
                id: idOf(item),
                href: item.path.split('/').map(encodeURIComponent).join('/'),
                'media-type': item.type,
                properties: item.properties,
              }),
            ),
          ),
          x(
            'spine',
            { 'page-progression-direction': book.direction },
            items
              .filter(({ inSpine }) => inSpine)
              .map((item) => x('itemref', { idref: idOf(item) })),
          ),
        ],
      ),
    ]),
  );
}

function metadata(book: BookMetadata): Element[] {
  const property = (name: string, value: string) => x('meta', { property: name }, value);
  const { author, summary, licence, described, published, certified } = book;
  return [
    x('dc:identifier', { id: 'book-id' }, book.identifier),
    x('dc:title', book.title),
    x('dc:language', book.language),
    ...(author === undefined
      ? []
      : [
          x('dc:creator', { id: 'author' }, author),
          x('meta', { refines: '#author', property: 'role', scheme: 'marc:relators' }, 'aut'),
        ]),
    ...(summary === undefined ? [] : [x('dc:description', summary)]),
    ...(licence === undefined ? [] : [x('dc:rights', licence)]),
    ...(published === undefined ? [] : [x('dc:date', published.toISOString().slice(0, 10))]),
    // To the second, in UTC (EPUB 3.3, 5.5.5).
    property('dcterms:modified', book.modified.toISOString().replace(/\.\d+Z$/, 'Z')),
    // The terms of EPUB Accessibility 1.1, section 2, and their values at w3.org/2021/a11y-discov-vocab.
    property('schema:accessMode', 'textual'),
    property('schema:accessMode', 'visual'),
    ...(described ? [property('schema:accessModeSufficient', 'textual')] : []),
    property('schema:accessModeSufficient', 'textual,visual'),
    ...(described ? [property('schema:accessibilityFeature', 'alternativeText')] : []),
    property('schema:accessibilityFeature', 'tableOfContents'),
    property('schema:accessibilityFeature', 'readingOrder'),
    property('schema:accessibilityFeature', 'structuralNavigation'),
    property('schema:accessibilityFeature', 'displayTransformability'),
    property('schema:accessibilityHazard', 'none'),
    ...(described ? [property('schema:accessibilitySummary', book.accessibility)] : []),
    ...(certified !== undefined && described ? conformance(certified) : []),
  ];
}

/**
 * Says that the book meets EPUB Accessibility 1.1, in the very words that its conformance reporting asks for, and
 * who has found so, which must stand beside it: somebody has to look at the book, and no program can.
 */
function conformance(certifiedBy: string): Element[] {
  const id = 'accessibility';
  return [
    x('meta', { property: 'dcterms:conformsTo', id }, 'EPUB Accessibility 1.1 - WCAG 2.2 Level AA'),
    x('meta', { property: 'a11y:certifiedBy', refines: `#${id}` }, certifiedBy),
  ];
}
