import type { Element, ElementContent } from 'hast';
import { raw } from 'hast-util-raw';
import { joinSentences } from '../contract/index.ts';
import { type BoardPicture, drawBoard } from '../draw/index.ts';
import type { Medium } from '../render/index.ts';

/** What a board shows: a placement in FEN, the side below, marks, arrows, and words for who does not see it. */
export type Board = BoardPicture;

/** In CSS pixels. */
const width = 400;

/** Boards as pictures of the given addresses, or as SVG; no two of these have the same ids. */
export function boardElement(addressOf?: (board: Board) => string): Medium['board'] {
  let count = 0;
  return (board) => {
    if (addressOf) return image(board, addressOf(board));
    count += 1;
    return svg(drawBoard({ ...board, size: width, idPrefix: `board-${count}-` }));
  };
}

function image(board: Board, src: string): Element {
  const alt = joinSentences(board.title, board.desc);
  return {
    type: 'element',
    tagName: 'img',
    properties: { src, alt, width, height: width },
    children: [],
  };
}

/** The markup as elements, which every pipeline takes; raw HTML is refused by most. */
function svg(markup: string): ElementContent {
  const tree = raw({ type: 'root', children: [{ type: 'raw', value: markup }] });
  const [element] = tree.type === 'root' ? tree.children : [];
  if (element?.type !== 'element') throw new Error('a board is an <svg> element');
  return element;
}
