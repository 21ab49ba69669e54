import type { Element, ElementContent, RootContent } from 'hast';
import type { Chapter, Course, Page } from '../../model/index.ts';
import { element } from '../../render/index.ts';
import type { LetterFrame } from './letter-frame.ts';

/** The author's pages that a letter ends with. */
export interface PagesAtFoot {
  readonly texts: readonly Page[];
  readonly links: readonly Page[];
}

/**
 * Where no site is known a link has nowhere to lead, and the text stands in its place.
 * @param told what the letter tells: a page that is sent is not added to itself.
 */
export function pagesAtFoot(
  { pages }: Course,
  site: string | undefined,
  told: readonly Chapter[],
): PagesAtFoot {
  const isLink = ({ page }: Page) => page.letter === 'link' && site !== undefined;
  const all = pages.filter((page) => page.page.letter !== undefined && !told.includes(page));
  return { texts: all.filter((page) => !isLink(page)), links: all.filter(isLink) };
}

/**
 * A letter's frame with the texts of pages below it, where a heading is no more than a line.
 * @param fit brings a text into the form of the letter.
 */
export function withPages(
  frame: LetterFrame,
  texts: readonly (readonly [page: Page, text: readonly RootContent[]])[],
  fit: (text: readonly RootContent[]) => readonly ElementContent[],
): LetterFrame {
  const below = texts.flatMap(([{ title }, text]) => [line(title), ...fit(text).map(lowered)]);
  return { ...frame, foot: [...frame.foot, ...below] };
}

/** One line with links to pages; none where there are none. */
export function linksAtFoot(pages: readonly Page[], site: string | undefined): Element[] {
  const links = pages.flatMap(({ id, title }, index) => [
    ...(index === 0 ? [] : [' · ']),
    element('a', { href: `${site}/${encodeURIComponent(id)}.html` }, [title]),
  ]);
  return links.length === 0 ? [] : [element('p', {}, links)];
}

function line(...words: (string | ElementContent)[]): Element {
  return element('p', {}, [element('b', {}, words)]);
}

function lowered(node: ElementContent): ElementContent {
  if (node.type !== 'element') return node;
  return /^h[1-6]$/.test(node.tagName) ? line(...node.children) : node;
}
