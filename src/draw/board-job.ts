import { drawBoard } from './board.ts';
import type { BoardPicture } from './picture.ts';
import type { PngSize } from './png.ts';
import { narrowest, type TiledPicture } from './tiled-board.ts';

/** A board in the theme for picture files, for `makePngs`. @throws RangeError as `drawBoard`. */
export function boardJob(
  { arrows = [], ...picture }: BoardPicture,
  size: Pick<PngSize, 'width' | 'scale' | 'level'>,
): PngSize & { readonly svg: string; readonly board?: TiledPicture } {
  const svg = drawBoard({ ...picture, arrows, theme: 'two-tone' });
  // An arrow goes over several squares, and brings colours of its own.
  const isTiled = arrows.length === 0 && size.width * (size.scale ?? 1) >= narrowest;
  if (!isTiled) return { svg, ...size };
  const { title: _, desc: __, ...board } = picture;
  return { svg, board, ...size };
}
