/** Positions as pictures: SVG files, boards inside pages, PNG images and cards. */
export type { BoardArrow } from './arrows.ts';
export { drawBoard } from './board.ts';
export { boardJob } from './board-job.ts';
export { drawCaptionedBoard } from './caption.ts';
export { cardJob, drawCard } from './card.ts';
export { coverJob, drawCover } from './cover.ts';
export type { LastMove } from './marks.ts';
export { makeOnePng } from './one-png.ts';
export { drawBoardInPage, pieceSprite } from './page-board.ts';
export { type Inks, inks as embedInks, inksOf, palettes, type Theme } from './paint.ts';
export type { BoardPicture } from './picture.ts';
export { makePng } from './png.ts';
export { makePngs, type PngJob } from './pngs.ts';
export { stateMark, stateSprite, states } from './state-marks.ts';
