import { drawBoard } from '../board.ts';
import type { Inks } from '../paint.ts';
import type { BoardPicture } from '../picture.ts';
import { boardKey } from './board-key.ts';
import type { LatePicture, PngSize } from './png.ts';
import { narrowest } from './tiled-board.ts';

/** A board in the theme for picture files, or in a course's own inks, for `makePngs`; to draw it throws a RangeError as `drawBoard`. */
export function boardJob(
  { title: _, desc: __, ...picture }: BoardPicture,
  {
    inks,
    ...size
  }: Pick<PngSize, 'width' | 'scale' | 'level'> & { readonly inks?: Inks | undefined },
): PngSize & LatePicture {
  const { arrows = [], ...board } = picture;
  // An arrow goes over several squares, and brings colours of its own.
  const isTiled = arrows.length === 0 && size.width * (size.scale ?? 1) >= narrowest;
  const draw = async () =>
    isTiled ? { ...board, inks } : drawBoard({ ...picture, theme: inks ?? 'two-tone' });
  return { key: boardKey(picture, inks), draw, ...size };
}
