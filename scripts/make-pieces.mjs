/**
 * Writes the outlines that the boards are drawn with, so that no font is needed to draw one:
 *
 *   src/draw/pieces.ts        U+2654 to U+265F of Noto Sans Symbols 2
 *   src/draw/coordinates.ts   `a` to `h` and `1` to `8` of Source Serif 4
 *   src/site/styles/figurines.css   U+2654 to U+2658 of Noto Sans Symbols 2, as polygons
 *
 * Both fonts are under the SIL Open Font License 1.1; see src/draw/PIECES-LICENCE.txt.
 * Run it again after updating either font: `npx --no-install node scripts/make-pieces.mjs`, then
 * `npm run format`.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { openSync } from 'fontkit';

const root = new URL('../', import.meta.url);
const font = (path) => openSync(fileURLToPath(new URL(`node_modules/@fontsource/${path}`, root)));
const write = (path, text) => writeFileSync(new URL(path, root), text);

/**
 * A glyph as contours of quadratic segments in whole numbers, y downwards.
 * @returns {{start: number[], segments: number[][]}[]} a segment is [x, y] or [cx, cy, x, y]
 */
function contours(glyph, place) {
  const found = [];
  for (const { command, args } of glyph.path.commands) {
    const points = [];
    for (let i = 0; i < args.length; i += 2) points.push(...place(args[i], args[i + 1]));
    if (command === 'moveTo') found.push({ start: points, segments: [] });
    else if (command === 'lineTo' || command === 'quadraticCurveTo')
      found.at(-1).segments.push(points);
    else if (command !== 'closePath') throw new Error(`${command} in a TrueType outline`);
  }
  return found;
}

/** The shortest relative path data of some contours. */
function pathData(list) {
  let at = [0, 0];
  let data = '';
  const add = (letter, numbers) => {
    data += letter + numbers.join(' ').replaceAll(' -', '-');
  };
  for (const { start, segments } of list) {
    add('m', [start[0] - at[0], start[1] - at[1]]);
    at = start;
    for (const points of segments) {
      const [x, y] = points.slice(-2);
      if (points.length === 4)
        add(
          'q',
          points.map((value, i) => value - at[i % 2]),
        );
      else if (x === at[0] && y === at[1]) continue;
      else if (y === at[1]) add('h', [x - at[0]]);
      else if (x === at[0]) add('v', [y - at[1]]);
      else add('l', [x - at[0], y - at[1]]);
      at = [x, y];
    }
    data += 'z';
    at = start;
  }
  return data.replace(/^m/, 'M');
}

/** Whether a contour's first point lies within another (even-odd rule, curves as chords). */
function inside(inner, outer) {
  const [x, y] = inner.start;
  const ring = [outer.start, ...outer.segments.map((points) => points.slice(-2))];
  let within = false;
  for (const [i, [x1, y1]] of ring.entries()) {
    const [x2, y2] = ring[(i + 1) % ring.length];
    if (y1 > y !== y2 > y && x < ((x2 - x1) * (y - y1)) / (y2 - y1) + x1) within = !within;
  }
  return within;
}

const silhouette = (list) =>
  list.filter((one) => !list.some((other) => other !== one && inside(one, other)));

const symbols = font('noto-sans-symbols-2/files/noto-sans-symbols-2-symbols-400-normal.woff');
const kinds = ['king', 'queen', 'rook', 'bishop', 'knight', 'pawn'];

/** Font units that make one side of a square, and the height of its middle above the base line. */
const side = 905;
const middle = 362;
const inSquare = (x, y) => [
  Math.round(((x - 500) * 1000) / side + 500),
  Math.round(((middle - y) * 1000) / side + 500),
];

let pieces = `/**
 * Made by scripts/make-pieces.mjs; do not edit.
 *
 * Outlines of the chess symbols U+2654 to U+265F of Noto Sans Symbols 2, Copyright 2022 The Noto
 * Project Authors, under the SIL Open Font License 1.1 (PIECES-LICENCE.txt), as path data in a
 * square of 1000 by 1000. \`body\` is the silhouette, to be filled with the colour of the paper;
 * \`lines\` is the symbol itself, to be filled with ink on top.
 */
import type { Color, PieceKind } from '../chess/types.ts';

export interface PieceOutline {
  readonly body: string;
  readonly lines: string;
}

export const pieceOutlines: Readonly<Record<Color, Readonly<Record<PieceKind, PieceOutline>>>> = {\n`;
for (const [c, color] of ['white', 'black'].entries()) {
  pieces += `  ${color}: {\n`;
  for (const [k, kind] of kinds.entries()) {
    const list = contours(symbols.glyphForCodePoint(0x2654 + c * 6 + k), inSquare);
    pieces += `    ${kind}: {\n      body: '${pathData(silhouette(list))}',\n      lines: '${pathData(list)}',\n    },\n`;
  }
  pieces += '  },\n';
}
write('src/draw/pieces.ts', `${pieces}};\n`);

/** How far a polygon may lie from its curve, in thousandths of the figure: less than a printer's dot. */
const tolerance = 4;

/** The corners of a contour whose curves have become chords, back at its start. */
function corners({ start, segments }) {
  const found = [start];
  let at = start;
  for (const points of segments) {
    const [x, y] = points.slice(-2);
    if (points.length === 4) {
      const [cx, cy] = points;
      // A chord of a quadratic curve is farthest from it in the middle, and half as long four times nearer.
      const bend = Math.hypot(cx - (at[0] + x) / 2, cy - (at[1] + y) / 2) / 2;
      const chords = Math.ceil(Math.sqrt(bend / tolerance)) || 1;
      for (let i = 1; i < chords; i++) {
        const t = i / chords;
        const mix = (from, over, to) =>
          Math.round((1 - t) ** 2 * from + 2 * t * (1 - t) * over + t ** 2 * to);
        found.push([mix(at[0], cx, x), mix(at[1], cy, y)]);
      }
    }
    found.push([x, y]);
    at = [x, y];
  }
  return [...found, start];
}

/** One polygon of all contours: the way to each from the first one's start, and back, has no width. */
function polygon(list) {
  const [first, ...others] = list.map(corners);
  const all = [...first, ...others.flatMap((points) => [...points, first[0]])];
  const points = all.filter(([x, y], i) => x !== all[i - 1]?.[0] || y !== all[i - 1]?.[1]);
  return points.map(([x, y]) => `${x / 10}% ${y / 10}%`).join(', ');
}

let figurines = `/*
 * Made by scripts/make-pieces.mjs; do not edit.
 *
 * The chess symbols U+2654 to U+2658 of Noto Sans Symbols 2, Copyright 2022 The Noto Project Authors,
 * under the SIL Open Font License 1.1 (src/draw/PIECES-LICENCE.txt). As polygons they need no picture:
 * a page from a folder could not load one as a mask, and a host's policy may forbid data addresses.
 */
/* biome-ignore-all format: a corner a line would be a thousand lines */\n`;
for (const [k, kind] of kinds.entries()) {
  if (kind === 'pawn') continue;
  const list = contours(symbols.glyphForCodePoint(0x2654 + k), inSquare);
  figurines += `.figurine.${kind} {\n  clip-path: polygon(${polygon(list)});\n}\n`;
}
write('src/site/styles/figurines.css', figurines);

const serif = font('source-serif-4/files/source-serif-4-latin-400-normal.woff');
let signs = `/**
 * Made by scripts/make-pieces.mjs; do not edit.
 *
 * Outlines of \`a\` to \`h\` and \`1\` to \`8\` of Source Serif 4, Copyright 2014-2021 Adobe, under the
 * SIL Open Font License 1.1 (PIECES-LICENCE.txt), as path data, 1000 to the em; 0 0 is the middle of
 * the sign on its base line.
 */
export const coordinateOutlines: Readonly<Record<string, string>> = {\n`;
for (const sign of '12345678abcdefgh') {
  const glyph = serif.glyphForCodePoint(sign.charCodeAt(0));
  const list = contours(glyph, (x, y) => [Math.round(x - glyph.advanceWidth / 2), Math.round(-y)]);
  signs += `  ${sign}: '${pathData(list)}',\n`;
}
write('src/draw/coordinates.ts', `${signs}};\n`);
