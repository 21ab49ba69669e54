import type { Element, ElementContent, Nodes, Root } from 'hast';
import { visit } from 'unist-util-visit';
import type { BoardPicture, Inks } from '../../draw/index.ts';
import { type Chapter, decodeAddress } from '../../model/index.ts';
import {
  type Ask,
  addressInSite,
  assignAddresses,
  chapterDocument,
  element,
  elementsIn,
  type PartMaker,
  type RenderContext,
  resolve,
  type Target,
} from '../../render/index.ts';
import type { Strings } from '../../strings/index.ts';
import { collectPictures } from '../pictures.ts';
import { fitTree } from './fit-tree.ts';
import { linkAnswers } from './link-answers.ts';
import { noteRoles } from './note-roles.ts';
import { makeXhtml } from './xhtml.ts';

/** Where the pictures of boards stand, as seen from a page. */
export const boardFolder = '../images';

/** A chapter as a page of a book. */
export interface BookPart {
  readonly xhtml: string;
  /** The headings of the second level, and that of the answers, for the contents. */
  readonly headings: readonly { readonly id: string; readonly title: string }[];
  /** Whether every picture in it is described. */
  readonly described: boolean;
  /** The boards that it shows, in their order. */
  readonly boards: readonly BoardPicture[];
}

interface BookSetting {
  readonly site: string | undefined;
  /** Where the book has the author's pictures, by their files. */
  readonly pictures: ReadonlyMap<string, { readonly path: string }>;
  /** Of its boards, where the course has its own. */
  readonly inks?: Inks | undefined;
}

/** What a link leads to is in the book, on the web, or nowhere. */
export function bookPart({ site, pictures, inks }: BookSetting): PartMaker<BookPart> {
  const paths = new Map([...pictures].map(([file, { path }]) => [file, path]));
  return {
    kind: 'book',
    inputs: JSON.stringify([site ?? null, inks ?? null, ...paths]),
    make: (context) => makePart(context, site, paths, inks),
  };
}

function makePart(
  context: RenderContext,
  site: string | undefined,
  pictures: ReadonlyMap<string, string>,
  inks: Inks | undefined,
): BookPart {
  const { ask, chapter, settings, strings } = context;
  const boards: BoardPicture[] = [];
  const { board } = collectPictures(boardFolder, inks);
  const document = chapterDocument(context);
  const medium = {
    isLive: false,
    board: (picture: BoardPicture) => {
      boards.push(picture);
      return board(picture);
    },
    addressOf: addressFrom(ask, chapter.file, () => idsShown(document), site),
    showsLastBoards: true,
  };
  const tree = resolve(document, medium, strings);
  linkAnswers(tree, strings.book.toAnswer);
  noteRoles(tree);
  const body = fitTree(tree, (url) => {
    if (url.startsWith(`${boardFolder}/`)) return url;
    const path = pictures.get(decodeAddress(url));
    return path && `../${path}`;
  });
  const number = chapter.page ? undefined : ask('chapter', chapter.file)?.number;
  const page = chapterPage(chapter, number, strings, body);
  return {
    xhtml: makeXhtml({ language: settings.language, title: chapter.title }, page),
    headings: headings(body),
    described: isDescribed(body),
    boards,
  };
}

function addressFrom(
  ask: Ask,
  from: string,
  idsOf: () => ReadonlySet<string>,
  site: string | undefined,
): (target: Target) => string | undefined {
  const inBook = assignAddresses(ask, 'xhtml');
  const onSite = assignAddresses(ask);
  let own: ReadonlySet<string> | undefined;
  const isShown = (file: string, id: string) => {
    if (file !== from) return ask('shows', { chapter: file, id });
    own ??= idsOf();
    return own.has(id);
  };
  return (target) => {
    switch (target.to) {
      case 'web':
        return target.address;
      case 'course':
        return target.web;
      case 'note':
        return addressInSite(target, inBook);
      case 'place':
      case 'chapter': {
        const file = target.to === 'place' ? target.ref.chapter : target.chapter;
        const id = target.to === 'place' ? inBook.id(target.ref) : target.id;
        if (ask('chapter', file)?.page === 'on the site') {
          return site && `${site}/${addressInSite(target, onSite)}`;
        }
        if (id !== undefined && isShown(file, id)) {
          return addressInSite({ to: 'chapter', chapter: file, id }, inBook, from);
        }
        // A heading that is not there: its page is.
        return file === from ? undefined : inBook.page(file);
      }
      default:
        return site && !/^[\\/.]/.test(target.address)
          ? `${site}/${addressInSite(target, onSite)}`
          : undefined;
    }
  };
}

/** The ids of what a reader sees: an answer stands at the end of its chapter, not below its exercise. */
function idsShown(document: Root): ReadonlySet<string> {
  const ids = new Set<string>();
  const walk = (node: Nodes): void => {
    if (node.type === 'element') {
      if (node.data?.role === 'answer' || node.data?.role === 'pictures') return;
      const { id } = node.properties;
      if (typeof id === 'string') ids.add(id);
    }
    if ('children' in node) for (const child of node.children) walk(child);
  };
  walk(document);
  return ids;
}

function chapterPage(
  { title, summary }: Chapter,
  number: number | undefined,
  strings: Strings,
  body: readonly ElementContent[],
): Element[] {
  const what =
    number === undefined
      ? { 'epub:type': 'backmatter' }
      : { 'epub:type': 'chapter', role: 'doc-chapter' };
  return [
    element('section', what, [
      element('header', {}, [
        ...(number === undefined
          ? []
          : [element('p', { className: ['number'] }, [strings.chapterNumber(number)])]),
        element('h1', {}, [title]),
        ...(summary === undefined
          ? []
          : [element('p', { className: ['summary'] }, [summary.trim()])]),
      ]),
      ...body,
    ]),
  ];
}

function headings(body: readonly ElementContent[]): BookPart['headings'] {
  return body.flatMap((node) => {
    if (node.type !== 'element') return [];
    if (node.properties['epub:type'] === 'answers') return headings(node.children.slice(0, 1));
    if (node.tagName !== 'h2') return [];
    const { id } = node.properties;
    return typeof id === 'string' ? [{ id, title: wordsIn(node) }] : [];
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
