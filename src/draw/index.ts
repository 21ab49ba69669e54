/** Positions as pictures: SVG files, boards inside pages, PNG images and cards. */
export type { ArrowMeaning, BoardArrow } from './arrows.ts';
export { type BoardFile, drawBoard } from './board.ts';
export { boardCss } from './board-css.ts';
export { boardJob } from './board-job.ts';
export { type Caption, drawCaptionedBoard } from './caption.ts';
export { type Card, cardJob, drawCard, makeCard } from './card.ts';
export { coverJob, drawCover } from './cover.ts';
export type { LastMove } from './marks.ts';
export { makeOnePng } from './one-png.ts';
export { drawBoardInPage, pieceSprite } from './page-board.ts';
export {
  type ColourIn,
  type Inks,
  inks as embedInks,
  inksOf,
  palettes,
  type Theme,
  themes,
} from './paint.ts';
export type { BoardPicture } from './picture.ts';
export { makePng, type PngSize } from './png.ts';
export { makePngs, type PngJob, type PngsOptions } from './pngs.ts';
export { type State, stateMark, stateSprite, states } from './state-marks.ts';
