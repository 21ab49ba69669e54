import { Resvg } from '@resvg/resvg-js';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { drawBoard } from '../board.ts';
import { themes } from '../paint.ts';
import { makePng } from './png.ts';

const middlegame = 'r2q1rk1/pp2bppp/2n1bn2/3p4/3N4/2N3P1/PP2PPBP/R1BQ1RK1';
const board = drawBoard({ placement: middlegame });

test.each([
  { width: 0 },
  { width: 50_000 },
  { width: Number.NaN },
  { width: 560, scale: 0 },
  { width: 560, scale: Number.NaN },
  { width: 4096, scale: 3 },
  { width: -560, scale: -1 },
])('an image of $width pixels at scale $scale is refused', (size) => {
  expect(() => makePng(board, size)).toThrow(/^an image cannot be .* from 16 to 8192$/);
});

test.each([1, 1.5, 257, Number.NaN])('an image of %s colours is refused', (colours) => {
  expect(() => makePng(board, { width: 100, colours })).toThrow('give a number from 2 to 256');
});

test('an image too high is refused before it is drawn', () => {
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="10" height="100000"/>';
  expect(() => makePng(svg, { width: 100 })).toThrow('pixels high: at most 8192');
});

test('text is refused rather than lost', () => {
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><text>a</text></svg>';
  expect(() => makePng(svg, { width: 100 })).toThrow('holds <text>');
});

test('the scale multiplies the width', () => {
  const { width, height } = PNG.sync.read(Buffer.from(makePng(board, { width: 320, scale: 2 })));
  expect([width, height]).toEqual([640, 640]);
});

/** The palette must not be seen: compared with resvg's full colour. */
test.each(themes)('the palette keeps to the colours drawn, theme %s', (theme) => {
  const svg = drawBoard({
    placement: middlegame,
    theme,
    marks: ['e5'],
    arrows: [
      { meaning: 'plan', from: 'd4', to: 'e6' },
      { meaning: 'threat', from: 'g2', to: 'd5' },
      { meaning: 'guard', from: 'a8', to: 'c8' },
    ],
  });
  const full = new Resvg(svg, { fitTo: { mode: 'width', value: 320 } }).render().pixels;
  const { data } = PNG.sync.read(Buffer.from(makePng(svg, { width: 320 })));
  let squares = 0;
  for (let i = 0; i < data.length; i += 1) squares += ((data[i] ?? 0) - (full[i] ?? 0)) ** 2;
  expect(Math.sqrt(squares / data.length)).toBeLessThan(6);
});

test('boards are small: 560 pixels, once and in double size', () => {
  const lastMove = { from: 'c1', to: 'g5' };
  const twoTone = drawBoard({ placement: middlegame, lastMove, turn: 'white', theme: 'two-tone' });
  expect(makePng(board, { width: 560 }).length).toBeLessThan(16_000);
  expect(makePng(board, { width: 560, scale: 2 }).length).toBeLessThan(40_000);
  expect(makePng(twoTone, { width: 560 }).length).toBeLessThan(15_000);
  expect(makePng(twoTone, { width: 560, scale: 2 }).length).toBeLessThan(25_000);
});
