import type { Color, Square } from '../../chess/types.ts';
import { squareCorner } from '../../draw/geometry.ts';
import { overMarkup, pieceMarkup, turnHref, underMarkup } from '../../draw/page-board.ts';
import type { BoardPicture } from '../../draw/picture.ts';
import { pieceId } from '../../draw/piece-paths.ts';
import { readPlacement } from '../../draw/placement.ts';
import { addDrawn, fillDrawn } from '../drawn-markup.ts';

/** Two squares, in the order that a piece passes from one to the other. */
export interface Glide {
  readonly from: Square;
  readonly to: Square;
}

/** Draws a position on a board of the page (`draw/page-board.ts`), as seen from `view`. */
export function drawOn(
  svg: Element,
  picture: BoardPicture,
  view: Color,
  glide?: Glide | undefined,
): void {
  const turned = svg.getAttribute('data-view') !== view;
  svg.setAttribute('data-view', view);
  svg.querySelector(':scope > use')?.setAttribute('href', `#board-${view}`);
  fill(svg, '.board-under', underMarkup(picture, view));
  setPieces(svg, picture.placement, view, turned);
  fill(svg, '.board-over', overMarkup(picture.arrows ?? [], view));
  if (picture.turn) svg.querySelector('.turn')?.setAttribute('href', turnHref(picture.turn, view));
  if (glide) move(svg, glide, view);
}

/** Pieces that stay where they are stay in the page: a move changes two of thirty. */
function setPieces(svg: Element, placement: string, view: Color, anew: boolean): void {
  const group = svg.querySelector('.pieces');
  if (group === null) return;
  const missing = new Map(readPlacement(placement).map(({ square, piece }) => [square, piece]));
  for (const drawn of [...group.children]) {
    const square = drawn.getAttribute('data-square') ?? '';
    const piece = missing.get(square);
    if (!anew && piece !== undefined && drawn.getAttribute('href') === `#${pieceId(piece)}`) {
      missing.delete(square);
    } else drawn.remove();
  }
  const markup = [...missing].map(([square, piece]) => pieceMarkup(square, piece, view));
  addDrawn(group, markup.join(''));
}

function fill(svg: Element, selector: string, markup: string): void {
  const group = svg.querySelector(selector);
  if (group !== null) fillDrawn(group, markup);
}

function move(svg: Element, { from, to }: Glide, view: Color): void {
  const { motion } = document.documentElement.dataset;
  if (motion === 'off' || matchMedia('(prefers-reduced-motion: reduce)').matches) return;
  const a = squareCorner(from, view);
  const b = squareCorner(to, view);
  svg
    .querySelector(`.pieces [data-square="${to}"]`)
    ?.animate([{ transform: `translate(${a.x - b.x}px, ${a.y - b.y}px)` }, { transform: 'none' }], {
      duration: 160,
      easing: 'ease-out',
    });
}
