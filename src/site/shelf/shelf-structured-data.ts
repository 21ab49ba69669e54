import type { SiteFrame } from '../site-data.ts';
import type { ShelfBook } from './shelf-data.ts';

/** What a shelf is, for search engines: a collection of schema.org with its courses. */
export function shelfStructuredData(
  { site = '', title, language, summary, author }: SiteFrame,
  books: readonly ShelfBook[],
) {
  return {
    '@type': 'CollectionPage',
    name: title,
    url: `${site}/`,
    inLanguage: language,
    ...(summary !== undefined && { description: summary }),
    ...(author !== undefined && { author: person(author) }),
    hasPart: books.map((book) => ({
      '@type': 'Course',
      '@id': `${site}/${book.at}#course`,
      name: book.title,
      url: `${site}/${book.at}`,
      inLanguage: book.language,
      isAccessibleForFree: true,
      description: book.summary ?? book.title,
      ...(book.author !== undefined && { provider: person(book.author) }),
    })),
  };
}

function person(name: string) {
  return { '@type': 'Person', name };
}
