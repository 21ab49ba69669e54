import { drawBoard } from './board.ts';
import { boardKey } from './board-key.ts';
import type { BoardPicture } from './picture.ts';
import type { PngSize } from './png.ts';
import type { LatePicture } from './pngs.ts';
import { narrowest } from './tiled-board.ts';

/** A board in the theme for picture files, for `makePngs`; to draw it throws a RangeError as `drawBoard`. */
export function boardJob(
  { title: _, desc: __, ...picture }: BoardPicture,
  size: Pick<PngSize, 'width' | 'scale' | 'level'>,
): PngSize & LatePicture {
  const { arrows = [], ...board } = picture;
  // An arrow goes over several squares, and brings colours of its own.
  const isTiled = arrows.length === 0 && size.width * (size.scale ?? 1) >= narrowest;
  const draw = async () => (isTiled ? board : drawBoard({ ...picture, theme: 'two-tone' }));
  return { key: boardKey(picture), draw, ...size };
}
