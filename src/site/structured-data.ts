import type { ShelfBook } from './shelf/shelf-data.ts';
import { shelfStructuredData } from './shelf/shelf-structured-data.ts';
import type { ChapterHead, OwnHead, SiteFrame } from './site-data.ts';

/** What a page shows: a chapter, a page of the author's, a course by its chapters, or a shelf by its courses. */
export type PageSubject =
  | ChapterHead
  | OwnHead
  | readonly ChapterHead[]
  | { readonly books: readonly ShelfBook[] };

/**
 * What a page is, for search engines: a course of schema.org with its chapters, or a chapter that
 * is part of one, a page of the author's, or a shelf of courses. JSON for a script element that no browser runs.
 */
export function structuredData(data: SiteFrame, shown: PageSubject): string {
  const site = data.site ?? '';
  const address = (file: string) => `${site}/${file === 'index.html' ? '' : file}`;
  const author = data.author === undefined ? {} : { author: person(data.author) };
  const about = {
    inLanguage: data.language,
    isAccessibleForFree: true,
    learningResourceType: 'course',
    educationalUse: 'self-study',
    ...author,
    ...(isAddress(data.licence) && { license: data.licence }),
  };
  const course = {
    '@type': 'Course',
    '@id': `${site}/#course`,
    name: data.title,
    url: address('index.html'),
    ...about,
  };
  const content =
    'books' in shown
      ? shelfStructuredData(data, shown.books)
      : isCourse(shown)
        ? {
            ...course,
            description: data.summary ?? data.title,
            image: `${site}/${data.card}`,
            ...(data.author !== undefined && { provider: person(data.author) }),
            hasPart: shown.map(({ id, title, number }) => ({
              '@type': 'LearningResource',
              name: title,
              position: number,
              url: address(`${id}.html`),
            })),
          }
        : !('number' in shown)
          ? {
              '@type': 'WebPage',
              name: shown.title,
              ...(shown.summary !== undefined && { description: shown.summary }),
              url: address(`${shown.id}.html`),
              inLanguage: data.language,
              ...author,
              isPartOf: course,
            }
          : {
              '@type': 'LearningResource',
              name: shown.title,
              ...(shown.summary !== undefined && { description: shown.summary }),
              url: address(`${shown.id}.html`),
              position: shown.number,
              image: `${site}/${shown.card}`,
              ...about,
              learningResourceType: 'chapter',
              isPartOf: course,
            };
  // In a script element a tag would end it.
  return JSON.stringify({ '@context': 'https://schema.org', ...content }).replaceAll(
    '<',
    '\\u003c',
  );
}

function isCourse(shown: PageSubject): shown is readonly ChapterHead[] {
  return Array.isArray(shown);
}

function person(name: string) {
  return { '@type': 'Person', name };
}

function isAddress(text: string | undefined): boolean {
  return text !== undefined && /^https?:\/\//.test(text);
}
