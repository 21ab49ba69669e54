/**
 * Boards inside pages. Runs in the browser too: no Node imports.
 *
 * A page that shows boards holds `pieceSprite()` once and the style sheet of `boardCss`. A board is
 *
 *     <svg class="board" viewBox="-6 -1.5 87.5 87.5" data-view="white" role="img" aria-label="…">
 *       <use href="#board-white"/>                    squares, frame, coordinates; -black, -bare
 *       <g class="board-under">…</g>                  last move, then marks: `underMarkup`
 *       <g class="pieces">
 *         <use data-square="e4" href="#piece-wp" x="40" y="40"/>   one a piece: `pieceMarkup`
 *       </g>
 *       <g class="board-over">…</g>                   arrows: `overMarkup`
 *       <use class="turn" href="#turn-white-up"/>     only with `turn`: `turnHref`
 *     </svg>
 *
 * without the white space. A piece's `x` and `y` are `squareCorner(square, view)`; `squareAt` turns
 * a point in board units into a square. There are no style attributes, so a strict content security
 * policy holds, and every colour is a custom property, so a theme is a matter of the style sheet.
 */

import { type Color, colors, type Piece, pieceKinds, type Square } from '../chess/types.ts';
import { joinSentences } from '../contract/sentence.ts';
import { arrowShapes, type BoardArrow } from './arrows.ts';
import { boardBox, squareCorner, viewBox } from './geometry.ts';
import {
  coordinateText,
  darkCorners,
  darkShapes,
  frameShapes,
  paperShape,
  turnShape,
} from './ground.ts';
import { lastMoveShapes, markShapes } from './marks.ts';
import { classMarkup } from './paint.ts';
import type { BoardPicture } from './picture.ts';
import { pieceId, pieceScale, pieceShapes } from './piece-paths.ts';
import { readPlacement } from './placement.ts';
import { escapeXml } from './xml.ts';

/**
 * A board as SVG for a page that holds `pieceSprite()`. Without a title it is hidden from
 * assistive technology, since the page then says elsewhere what it shows.
 * @throws RangeError for a placement, square or arrow that cannot be drawn.
 */
export function drawBoardInPage(board: BoardPicture): string {
  const { view = 'white', coordinates = true, turn, title, desc } = board;
  const pieces = readPlacement(board.placement);
  const ground = coordinates ? view : 'bare';
  // A title may be a whole sentence.
  const label = joinSentences(title, desc);
  const access = label ? `role="img" aria-label="${escapeXml(label)}"` : 'aria-hidden="true"';
  const box = viewBox(boardBox(coordinates || turn !== undefined));
  return (
    `<svg class="board" viewBox="${box}" data-view="${view}" ${access}>` +
    `<use href="#board-${ground}"/>` +
    `<g class="board-under">${underMarkup(board, view)}</g>` +
    `<g class="pieces">${pieces.map(({ square, piece }) => pieceMarkup(square, piece, view)).join('')}</g>` +
    `<g class="board-over">${overMarkup(board.arrows ?? [], view)}</g>` +
    (turn ? `<use class="turn" href="${turnHref(turn, view)}"/>` : '') +
    '</svg>'
  );
}

/** The content of `.board-under`. @throws RangeError for what is no square. */
export function underMarkup(
  { lastMove, marks }: Pick<BoardPicture, 'lastMove' | 'marks'>,
  view: Color,
): string {
  return classMarkup([...lastMoveShapes(lastMove, view), ...markShapes(marks ?? [], view)]);
}

/** The content of `.board-over`. @throws RangeError for an arrow that cannot be drawn. */
export function overMarkup(arrows: readonly BoardArrow[], view: Color): string {
  return classMarkup(arrowShapes(arrows, view));
}

/** One piece in `.pieces`. @throws RangeError for what is no square. */
export function pieceMarkup(square: Square, piece: Piece, view: Color): string {
  const { x, y } = squareCorner(square, view);
  return `<use data-square="${square}" href="#${pieceId(piece)}" x="${x}" y="${y}"/>`;
}

/** What the `href` of `.turn` is for a side to move. */
export function turnHref(turn: Color, view: Color): string {
  return `#turn-${turn}-${turn === view ? 'up' : 'down'}`;
}

/**
 * The symbols that every board of a page uses, as one inline `<svg>` that takes no room:
 * `piece-wk` to `piece-bp` in a square of 10 by 10, `board-white`, `board-black` and `board-bare`
 * (without coordinates), `turn-white-up` and the like.
 */
export function pieceSprite(): string {
  const pieces = colors.flatMap((color) => pieceKinds.map((kind) => pieceSymbol({ color, kind })));
  const turns = colors.flatMap((turn) =>
    colors.map(
      (view) =>
        `<g id="${turnHref(turn, view).slice(1)}">${classMarkup([turnShape(turn, view)])}</g>`,
    ),
  );
  const dark = classMarkup(darkShapes(darkCorners));
  const paper = classMarkup([paperShape()]);
  const frame = classMarkup(frameShapes());
  return (
    '<svg class="board-sprite" width="0" height="0" aria-hidden="true"><defs>' +
    `<g id="board-bare">${paper}${dark}${frame}</g>` +
    colors.map(groundSymbol).join('') +
    turns.join('') +
    pieces.join('') +
    '</defs></svg>'
  );
}

function pieceSymbol(piece: Piece): string {
  return `<g id="${pieceId(piece)}" transform="scale(${pieceScale})">${classMarkup(pieceShapes(piece))}</g>`;
}

function groundSymbol(view: Color): string {
  return `<g id="board-${view}"><use href="#board-bare"/>${coordinateText(view)}</g>`;
}
