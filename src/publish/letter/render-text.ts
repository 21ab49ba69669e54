import type { Element, RootContent } from 'hast';
import { visit } from 'unist-util-visit';
import type { Course } from '../../model/index.ts';
import { chapterTree, contextOf, type Medium, makeStill } from '../../site/render/index.ts';
import { lastBoard } from '../last-board.ts';
import type { LetterText } from './choose-text.ts';

/**
 * The text of a letter, with boards as the medium makes them. A letter stands nowhere: an address
 * is whole, as seen from outside the site, or the link becomes text.
 */
export function renderText(
  course: Course,
  { chapters }: LetterText,
  board: Medium['board'],
  site: string | undefined,
): RootContent[] {
  const context = contextOf(course, { board, folds: false, below: lastBoard(course, board) });
  return chapters.flatMap((chapter) => {
    const tree = makeStill(chapterTree({ ...context, chapter }));
    const page = encodeURI(context.addresses.page(chapter.file));
    visit(tree, 'element', (node) => {
      if (node.tagName === 'a') leadOut(node, page, site);
    });
    return tree.children;
  });
}

function leadOut(link: Element, page: string, site: string | undefined): void {
  const url = String(link.properties.href ?? '');
  if (/^(?:https?|mailto|tel):/i.test(url)) return;
  const ownNote = /^#note-/.test(url);
  if (url !== '' && !ownNote && site !== undefined) {
    link.properties.href = `${site}/${url.startsWith('#') ? page : ''}${url}`;
    return;
  }
  delete link.properties.href;
  link.tagName = 'span';
}
