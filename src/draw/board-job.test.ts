import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { boardJob } from './board-job.ts';
import { makePng } from './png.ts';
import { narrowest } from './tiled-board.ts';

const middlegame = 'r1bq1rk1/pp2ppbp/2np1np1/8/3NP3/2N1BP2/PPPQ2PP/R3KB1R';
const plain = { placement: middlegame, lastMove: { from: 'e1', to: 'e2' }, marks: ['d5'] } as const;
const withArrow = { ...plain, arrows: [{ meaning: 'threat', from: 'd4', to: 'c6' }] } as const;
const decode = (png: Uint8Array) => PNG.sync.read(Buffer.from(png)).data;

/** The whole board, drawn by resvg at once, is what the pieces together must look like. */
test.each([
  { width: 320, scale: 2, view: 'white', turn: 'white' },
  { width: 560, scale: 1, view: 'black', coordinates: false },
  { width: narrowest, scale: 1, view: 'white', turn: 'black', coordinates: false },
] as const)('a board of $width at $scale from $view is its SVG, pixel for pixel', (one) => {
  const { width, scale, ...looks } = one;
  const job = boardJob({ ...plain, ...looks, placement: middlegame.replace('R3K', 'R2BK') }, one);
  if (job.board === undefined) throw new Error('it has no arrow');
  const tiled = makePng(job.board, job);
  const whole = makePng(job.svg, job);
  const [a, b] = [decode(tiled), decode(whole)];
  let strays = 0;
  for (const [i, byte] of a.entries()) if (Math.abs(byte - (b[i] ?? 0)) > 40) strays += 1;
  expect(strays / a.length).toBeLessThan(0.0005);
  // Colours that were chosen for all boards make files no larger.
  expect(tiled.length / whole.length).toBeLessThan(1.02);
});

test('squares of one board do not show up on the next', () => {
  const size = { width: 320, scale: 2 };
  const draw = (picture: Parameters<typeof boardJob>[0]) => {
    const job = boardJob(picture, size);
    return Buffer.from(makePng(job.board ?? job.svg, job));
  };
  const empty = { placement: '8/8/8/8/8/8/8/8' };
  const before = draw(empty);
  const moved = draw({ ...empty, lastMove: { from: 'a1', to: 'e5' } });
  draw(plain);
  expect(draw(empty).equals(before)).toBe(true);
  expect(draw({ ...empty, lastMove: { from: 'a1', to: 'e5' } }).equals(moved)).toBe(true);
  expect(moved.equals(draw({ ...empty, lastMove: { from: 'e5', to: 'a1' } }))).toBe(false);
});

test('a board with an arrow, or a very small one, is drawn as a whole', () => {
  expect(boardJob(withArrow, { width: 320, scale: 2 })).not.toHaveProperty('board');
  expect(boardJob(plain, { width: narrowest - 1 })).not.toHaveProperty('board');
});
