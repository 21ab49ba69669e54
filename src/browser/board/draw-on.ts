import type { Color, Square } from '../../chess/types.ts';
import { squareCorner } from '../../draw/geometry.ts';
import { overMarkup, pieceMarkup, turnHref, underMarkup } from '../../draw/page-board.ts';
import type { BoardPicture } from '../../draw/picture.ts';
import { readPlacement } from '../../draw/placement.ts';

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
  svg.setAttribute('data-view', view);
  svg.querySelector(':scope > use')?.setAttribute('href', `#board-${view}`);
  fill(svg, '.board-under', underMarkup(picture, view));
  const pieces = readPlacement(picture.placement);
  fill(
    svg,
    '.pieces',
    pieces.map(({ square, piece }) => pieceMarkup(square, piece, view)).join(''),
  );
  fill(svg, '.board-over', overMarkup(picture.arrows ?? [], view));
  if (picture.turn) svg.querySelector('.turn')?.setAttribute('href', turnHref(picture.turn, view));
  if (glide) move(svg, glide, view);
}

function fill(svg: Element, selector: string, markup: string): void {
  const group = svg.querySelector(selector);
  if (group !== null) group.innerHTML = markup;
}

function move(svg: Element, { from, to }: Glide, view: Color): void {
  if (matchMedia('(prefers-reduced-motion: reduce)').matches) return;
  const a = squareCorner(from, view);
  const b = squareCorner(to, view);
  svg
    .querySelector(`.pieces [data-square="${to}"]`)
    ?.animate([{ transform: `translate(${a.x - b.x}px, ${a.y - b.y}px)` }, { transform: 'none' }], {
      duration: 160,
      easing: 'ease-out',
    });
}
