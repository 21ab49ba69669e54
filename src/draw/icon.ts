import type { Color } from '../chess/index.ts';
import { palettes } from './paint.ts';
import { pieceOutlines } from './pieces.ts';

/** Side of the drawing; the outlines of pieces have a square of 1000. */
const side = 1000;

/**
 * A king on paper, as an SVG document of its own. An icon is a sheet with round corners; a maskable
 * one fills the square, and keeps the king in the circle of 80% that no mask cuts (W3C Web
 * Application Manifest, "Icon masks and safe zone").
 */
export function drawIcon(color: Color, maskable: boolean): string {
  const { paper: sheet, ink, 'board-white-piece': white } = palettes.light;
  const { body, lines } = pieceOutlines[color].king;
  const size = maskable ? 620 : 860;
  const at = (side - size) / 2;
  const corner = maskable ? 0 : 180;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="512" height="512" viewBox="0 0 ${side} ${side}">`,
    `<rect width="${side}" height="${side}" rx="${corner}" fill="${sheet}"/>`,
    `<g transform="translate(${at} ${at}) scale(${size / side})">`,
    `<path fill="${white}" d="${body}"/>`,
    `<path fill="${ink}" stroke="${ink}" stroke-width="12" d="${lines}"/>`,
    '</g></svg>',
  ].join('\n');
}
