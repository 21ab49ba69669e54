/** Positions as pictures: SVG files, boards inside pages, PNG images and cards. */
export type { BoardArrow } from './arrows.ts';
export { drawBoard } from './board.ts';
export { drawCaptionedBoard } from './card/caption.ts';
export { cardJob, drawCard } from './card/card.ts';
export { coverJob, drawCover } from './card/cover.ts';
export type { LastMove } from './marks.ts';
export { drawBoardInPage, pieceSprite } from './page-board.ts';
export { type Inks, inks as embedInks, inksOf, palettes, type Theme } from './paint.ts';
export type { BoardPicture } from './picture.ts';
export { boardJob } from './png/board-job.ts';
export { makeOnePng } from './png/one-png.ts';
export { makePng, type PngJob } from './png/png.ts';
export { makePngs } from './png/pngs.ts';
export { stateMark, stateSprite, states } from './state-marks.ts';
