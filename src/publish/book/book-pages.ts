import type { Element, ElementContent } from 'hast';
import { visit } from 'unist-util-visit';
import { type Chapter, type Course, fileOfAddress } from '../../model/index.ts';
import { element, elementsIn } from '../../render/index.ts';
import { type Strings, stringsFor } from '../../strings/index.ts';
import { fitTree } from './fit-tree.ts';
import type { BookPicture } from './media.ts';
import { type ContentsEntry, makeNavigation } from './navigation.ts';
import type { BookItem } from './package-document.ts';
import type { RenderedChapter } from './render-chapters.ts';
import { makeXhtml } from './xhtml.ts';

export interface BookPage extends BookItem {
  readonly content: string;
}

/** All pages of a book in their order, and whether every picture in them is described. */
export function bookPages(
  course: Course,
  chapters: readonly RenderedChapter[],
  { site, media }: { site: string | undefined; media: ReadonlyMap<string, BookPicture> },
): { pages: BookPage[]; described: boolean } {
  const { language, title } = course.settings;
  const strings = stringsFor(language);
  const src = (url: string) => {
    if (url.startsWith('../images/')) return url;
    const picture = media.get(fileOfAddress(url));
    return picture && `../${picture.path}`;
  };
  const bodies = chapters.map(({ tree }) => fitTree(tree, src));
  const page = (path: string, name: string, body: readonly ElementContent[]): BookPage => ({
    path,
    type: 'application/xhtml+xml',
    inSpine: true,
    content: makeXhtml({ language, title: name }, body),
  });
  const contents = chapters.map(({ chapter, file }, index): ContentsEntry => {
    const href = `../text/${encodeURIComponent(file)}`;
    const parts = headings(bodies[index] ?? [], href);
    return { href, title: chapter.title, parts };
  });
  const landmarks = [
    { href: 'cover.xhtml', type: 'cover', title: strings.book.cover },
    { href: 'title.xhtml', type: 'titlepage', title: strings.book.titlePage },
    { href: 'contents.xhtml', type: 'toc', title: strings.contents },
    ...contents
      .slice(0, 1)
      .map(({ href }) => ({ href, type: 'bodymatter', title: strings.book.text })),
  ];
  return {
    pages: [
      page('front/cover.xhtml', strings.book.cover, [cover(strings, title)]),
      page('front/title.xhtml', title, titlePage(course, strings, site)),
      {
        ...page(
          'front/contents.xhtml',
          strings.contents,
          makeNavigation(strings, contents, landmarks),
        ),
        properties: 'nav',
      },
      ...chapters.map(({ chapter, file }, index) =>
        page(
          `text/${file}`,
          chapter.title,
          chapterPage(chapter, index + 1, strings, bodies[index] ?? []),
        ),
      ),
    ],
    described: bodies.every(isDescribed),
  };
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

function chapterPage(
  { title, summary }: Chapter,
  number: number,
  strings: Strings,
  body: readonly ElementContent[],
): Element[] {
  return [
    element('section', { 'epub:type': 'chapter', role: 'doc-chapter' }, [
      element('header', {}, [
        element('p', { className: ['number'] }, [strings.chapterNumber(number)]),
        element('h1', {}, [title]),
        ...(summary === undefined
          ? []
          : [element('p', { className: ['summary'] }, [summary.trim()])]),
      ]),
      ...body,
    ]),
  ];
}

/** The headings of the second level, for the contents. */
function headings(body: readonly ElementContent[], href: string): ContentsEntry['parts'] {
  return body.flatMap((node) => {
    if (node.type !== 'element' || node.tagName !== 'h2') return [];
    const { id } = node.properties;
    return typeof id === 'string'
      ? [{ href: `${href}#${encodeURIComponent(id)}`, title: wordsIn(node) }]
      : [];
  });
}

function wordsIn(node: Element): string {
  let words = '';
  visit(node, 'text', ({ value }) => {
    words += value;
  });
  return words.trim();
}

function isDescribed(body: readonly ElementContent[]): boolean {
  for (const { tagName, properties } of elementsIn({ type: 'root', children: [...body] })) {
    if (tagName === 'img' && !properties.alt) return false;
  }
  return true;
}
