import type { Color, Piece } from '../chess/index.ts';
import { arrowShapes } from './arrows.ts';
import { type Box, boardBox, squareCorner, viewBox } from './geometry.ts';
import {
  coordinatePaths,
  darkCorners,
  darkShapes,
  frameShapes,
  paperShape,
  sheetShape,
  turnShape,
} from './ground.ts';
import { lastMoveShapes, markShapes } from './marks.ts';
import { asInks, type Inks, inkedMarkup, paintAttributes, type Theme } from './paint.ts';
import type { BoardPicture } from './picture.ts';
import { pieceId, pieceScale, pieceShapes } from './piece-paths.ts';
import { type PlacedPiece, readPlacement } from './placement.ts';
import { checkSize } from './size.ts';
import { escapeXml } from './xml.ts';

export interface BoardFile extends BoardPicture {
  /** Colours: a theme's, or of a course's own look; `light` unless said. */
  readonly theme?: Theme | Inks | undefined;
  /** Width in CSS pixels, 32 to 4096; 400 unless said. Without a caption also the height. */
  readonly size?: number | undefined;
  /** What its ids begin with, where several boards stand in one page. */
  readonly idPrefix?: string | undefined;
  /** A square part of it, in board units, which is drawn alone; all of it unless said. */
  readonly part?: Box | undefined;
}

/**
 * A board as an SVG document that stands alone: no style sheet, no font, no reference outside.
 * The same input gives the same bytes.
 * @throws RangeError for a size, placement, square or arrow that cannot be drawn.
 */
export function drawBoard(board: BoardFile): string {
  const { view = 'white', coordinates = true, size = 400, turn } = board;
  const { idPrefix = '' } = board;
  const inks = asInks(board.theme ?? 'light');
  checkSize(size);
  const pieces = readPlacement(board.placement);
  const outside = coordinates || turn !== undefined;
  const box = board.part ?? boardBox(outside);
  const paint = (shapes: Parameters<typeof inkedMarkup>[0]) => inkedMarkup(shapes, inks);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${size}" height="${size}" viewBox="${viewBox(box)}" role="img">`,
    words(board),
    definitions(pieces, inks, idPrefix),
    paint([sheetShape(outside), paperShape()]),
    darkCorners
      .map(({ x, y }) => `<use href="#${idPrefix}dark-square" x="${x}" y="${y}"/>`)
      .join(''),
    paint(frameShapes()),
    coordinates ? coordinateMarkup(view, inks) : '',
    paint([...lastMoveShapes(board.lastMove, view), ...markShapes(board.marks ?? [], view)]),
    pieces.map((placed) => pieceUse(placed, view, idPrefix)).join(''),
    paint(arrowShapes(board.arrows ?? [], view)),
    turn ? paint([turnShape(turn, view)]) : '',
    '</svg>',
  ]
    .filter((part) => part !== '')
    .join('\n');
}

function words({ title, desc }: BoardPicture): string {
  return (
    (title ? `<title>${escapeXml(title)}</title>` : '') +
    (desc ? `<desc>${escapeXml(desc)}</desc>` : '')
  );
}

/** The dark square, and each piece that stands on the board, once. */
function definitions(pieces: readonly PlacedPiece[], inks: Inks, prefix: string): string {
  const kinds = new Map<string, Piece>();
  for (const { piece } of pieces) kinds.set(pieceId(piece), piece);
  const symbols = [...kinds].map(
    ([id, piece]) =>
      `<g id="${prefix}${id}" transform="scale(${pieceScale})">${inkedMarkup(pieceShapes(piece), inks)}</g>`,
  );
  const dark = `<g id="${prefix}dark-square">${inkedMarkup(darkShapes([{ x: 0, y: 0 }]), inks)}</g>`;
  return `<defs>${dark}${symbols.join('')}</defs>`;
}

function pieceUse({ square, piece }: PlacedPiece, view: Color, prefix: string): string {
  const { x, y } = squareCorner(square, view);
  return `<use href="#${prefix}${pieceId(piece)}" x="${x}" y="${y}"/>`;
}

function coordinateMarkup(view: Color, inks: Inks): string {
  return `<g ${paintAttributes('board-coordinate', inks)}>${coordinatePaths(view)}</g>`;
}
