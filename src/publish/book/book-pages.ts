import type { Element, ElementContent } from 'hast';
import type { Chapter, Course } from '../../model/index.ts';
import { assignAddresses, element } from '../../render/index.ts';
import { type Strings, stringsFor } from '../../strings/index.ts';
import type { BookPart } from './chapter-part.ts';
import { type ContentsEntry, makeNavigation } from './navigation.ts';
import type { BookItem } from './package-document.ts';
import { makeXhtml } from './xhtml.ts';

export interface BookPage extends BookItem {
  readonly content: string;
}

/** All pages of a book in their order. @param documents its chapters and the author's pages, with their parts. */
export function bookPages(
  course: Course,
  documents: readonly (Pick<Chapter, 'file' | 'title'> & { readonly part: BookPart })[],
  site: string | undefined,
): BookPage[] {
  const { language, title } = course.settings;
  const strings = stringsFor(language);
  const addresses = assignAddresses(course, 'xhtml');
  const chapters = documents.map(({ file, title, part }) => ({
    file: addresses.page(file),
    title,
    part,
  }));
  const page = (path: string, content: string): BookPage => ({
    path,
    type: 'application/xhtml+xml',
    inSpine: true,
    content,
  });
  const front = (path: string, name: string, body: readonly ElementContent[]) =>
    page(`front/${path}`, makeXhtml({ language, title: name }, body));
  const contents = chapters.map(({ file, title, part }): ContentsEntry => {
    const href = `../text/${encodeURIComponent(file)}`;
    const parts = part.headings.map(({ id, title }) => ({
      href: `${href}#${encodeURIComponent(id)}`,
      title,
    }));
    return { href, title, parts };
  });
  const landmarks = [
    { href: 'cover.xhtml', type: 'cover', title: strings.book.cover },
    { href: 'title.xhtml', type: 'titlepage', title: strings.book.titlePage },
    { href: 'contents.xhtml', type: 'toc', title: strings.contents },
    ...contents
      .slice(0, 1)
      .map(({ href }) => ({ href, type: 'bodymatter', title: strings.book.text })),
  ];
  return [
    front('cover.xhtml', strings.book.cover, [cover(strings, title)]),
    front('title.xhtml', title, titlePage(course, strings, site)),
    {
      ...front('contents.xhtml', strings.contents, makeNavigation(strings, contents, landmarks)),
      properties: 'nav',
    },
    ...chapters.map(({ file, part }) => page(`text/${file}`, part.xhtml)),
  ];
}

function cover(strings: Strings, title: string): Element {
  const picture = {
    className: ['cover'],
    role: 'doc-cover',
    src: '../images/cover.png',
    alt: strings.cardAlt(title),
  };
  return element('section', { 'epub:type': 'cover' }, [element('img', picture, [])]);
}

function titlePage({ settings }: Course, strings: Strings, site: string | undefined): Element[] {
  const { title, author, side, summary, licence } = settings;
  const line = (className: string, content: (ElementContent | string)[]) =>
    element('p', { className: [className] }, content);
  return [
    element('section', { className: ['title-page'], 'epub:type': 'titlepage' }, [
      element('h1', {}, [title]),
      ...(author === undefined ? [] : [line('author', [strings.by(author)])]),
      line('side', [strings.sideTaught[side]]),
      ...(summary === undefined ? [] : [line('summary', [summary.trim()])]),
      ...(licence === undefined ? [] : [line('licence', [strings.licence(licence)])]),
      ...(site === undefined
        ? []
        : [
            line('online', [`${strings.book.courseOnline} `, element('a', { href: site }, [site])]),
          ]),
    ]),
  ];
}
