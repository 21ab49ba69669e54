import type { ChapterHead, OwnHead, SiteFrame } from './site-data.ts';

/**
 * What a page is, for search engines: a course of schema.org with its chapters, or a chapter that
 * is part of one, or a page of the author's. JSON for a script element that no browser runs.
 */
export function structuredData(
  data: SiteFrame,
  shown: ChapterHead | OwnHead | readonly ChapterHead[],
): string {
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
  const content = isCourse(shown)
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

function isCourse(
  shown: ChapterHead | OwnHead | readonly ChapterHead[],
): shown is readonly ChapterHead[] {
  return Array.isArray(shown);
}

function person(name: string) {
  return { '@type': 'Person', name };
}

function isAddress(text: string | undefined): boolean {
  return text !== undefined && /^https?:\/\//.test(text);
}
