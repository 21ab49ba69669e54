import { drawBoard } from './board.ts';
import type { BoardPicture } from './picture.ts';
import type { PngSize } from './png.ts';

/** A board in the theme for picture files, for `makePngs`. @throws RangeError as `drawBoard`. */
export function boardJob(
  picture: BoardPicture,
  size: Pick<PngSize, 'width' | 'scale'>,
): PngSize & { readonly svg: string } {
  const svg = drawBoard({ ...picture, theme: 'two-tone' });
  // An arrow brings colours of its own.
  return { svg, ...size, sharesPalette: (picture.arrows ?? []).length === 0 };
}
