import type { Color } from '../chess/index.ts';
import { type Inks, palettes } from './paint.ts';
import { pieceOutlines } from './pieces.ts';

/** Side of the drawing; the outlines of pieces have a square of 1000. */
const side = 1000;

/**
 * A king on paper, as an SVG document of its own. An icon is a sheet with round corners; a maskable
 * one fills the square, and keeps the king in the circle of 80% that no mask cuts (W3C Web
 * Application Manifest, "Icon masks and safe zone").
 */
export function drawIcon(color: Color, maskable: boolean, inks: Inks = palettes.light): string {
  const { paper: sheet, 'board-black-piece': ink, 'board-white-piece': white } = inks;
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

/** A picture of an author's own, as an address that holds it: `data:image/png;base64,…`. */
export type OwnIcon = string;

/**
 * An author's picture as an icon: alone, or where a phone cuts it round, on a ground and within the circle that no
 * mask cuts.
 */
export function frameIcon(own: OwnIcon, maskable: boolean, ground: string): string {
  const size = maskable ? 660 : side;
  const at = (side - size) / 2;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="512" height="512" viewBox="0 0 ${side} ${side}">`,
    ...(maskable ? [`<rect width="${side}" height="${side}" fill="${ground}"/>`] : []),
    `<image x="${at}" y="${at}" width="${size}" height="${size}" href="${own}"/>`,
    '</svg>',
  ].join('\n');
}
