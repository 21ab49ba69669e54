import { drawBoard } from '../board.ts';
import type { Inks } from '../paint.ts';
import { choosePalette, type Palette } from './palette.ts';

import { rasterOf } from './raster.ts';
import { readSvg } from './read-svg.ts';
import { specimens } from './tiled-board.ts';

const palettes = new Map<string, Palette>();

/**
 * The colours of all boards without arrows in the theme for picture files, or in a course's own inks, chosen once a process for each size: a board
 * with every piece, marks and a last move has each blend of the inks. To choose them anew took half the
 * time of a picture.
 * @param width of the picture in image pixels.
 */
export function boardPalette(width: number, isDense: boolean, inks?: Inks): Palette {
  const size = JSON.stringify([width, isDense, inks]);
  const known = palettes.get(size);
  if (known) return known;
  const svg = drawBoard({
    placement: specimens,
    theme: inks ?? 'two-tone',
    turn: 'white',
    marks: ['d2', 'e2'],
    lastMove: { from: 'b1', to: 'b2' },
  });
  const palette = choosePalette(rasterOf(readSvg(svg, width).render()).pixels, { isDense });
  palettes.set(size, palette);
  return palette;
}
