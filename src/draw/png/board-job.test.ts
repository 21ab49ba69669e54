import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { drawBoard } from '../board.ts';
import { boardJob } from './board-job.ts';
import { boardPalette } from './board-palette.ts';
import { makePng } from './png.ts';
import { narrowest, tiledBoards } from './tiled-board.ts';

const middlegame = 'r1bq1rk1/pp2ppbp/2np1np1/8/3NP3/2N1BP2/PPPQ2PP/R3KB1R';
const plain = { placement: middlegame, lastMove: { from: 'e1', to: 'e2' }, marks: ['d5'] } as const;
const withArrow = { ...plain, arrows: [{ meaning: 'threat', from: 'd4', to: 'c6' }] } as const;
const decode = (png: Uint8Array) => PNG.sync.read(Buffer.from(png)).data;

/** The whole board, drawn by resvg at once, is what the pieces together must look like. */
test.each([
  { width: 320, scale: 2, view: 'white', turn: 'white' },
  { width: 560, scale: 1, view: 'black', coordinates: false },
  { width: narrowest, scale: 1, view: 'white', turn: 'black', coordinates: false },
] as const)('a board of $width at $scale from $view is its SVG, pixel for pixel', async (one) => {
  const { width, scale, ...looks } = one;
  const picture = { ...plain, ...looks, placement: middlegame.replace('R3K', 'R2BK') };
  const job = boardJob(picture, one);
  const tiled = makePng(await job.draw(), job);
  const whole = makePng(drawBoard({ ...picture, theme: 'two-tone' }), job);
  const [a, b] = [decode(tiled), decode(whole)];
  let strays = 0;
  for (const [i, byte] of a.entries()) if (Math.abs(byte - (b[i] ?? 0)) > 40) strays += 1;
  expect(strays / a.length).toBeLessThan(0.0005);
  // Colours that were chosen for all boards make files no larger.
  expect(tiled.length / whole.length).toBeLessThan(1.02);
});

test('squares of one board do not show up on the next', async () => {
  const size = { width: 320, scale: 2 };
  const draw = async (picture: Parameters<typeof boardJob>[0]) => {
    const job = boardJob(picture, size);
    return Buffer.from(makePng(await job.draw(), job));
  };
  const empty = { placement: '8/8/8/8/8/8/8/8' };
  const before = await draw(empty);
  const moved = await draw({ ...empty, lastMove: { from: 'a1', to: 'e5' } });
  await draw(plain);
  expect((await draw(empty)).equals(before)).toBe(true);
  expect((await draw({ ...empty, lastMove: { from: 'a1', to: 'e5' } })).equals(moved)).toBe(true);
  expect(moved.equals(await draw({ ...empty, lastMove: { from: 'e5', to: 'a1' } }))).toBe(false);
});

/** Else the same course would have other pictures in another run: processes share the boards as they come. */
test.each([
  { width: 560, scale: 1 },
  { width: 320, scale: 2 },
])('a picture of $width at $scale has the same bytes, whatever was drawn before it', (size) => {
  const draw = tiledBoards({
    theme: 'two-tone',
    width: size.width * size.scale,
    palette: boardPalette(size.width * size.scale, size.scale === 2),
  });
  const full = { placement: 'RNBQKBNR/PPPPPPPP/NNNNNNNN/8/8/nnnnnnnn/pppppppp/rnbqkbnr' };
  const first = draw(full).indices;
  const other = tiledBoards({
    theme: 'two-tone',
    width: size.width * size.scale,
    palette: boardPalette(size.width * size.scale, size.scale === 2),
  });
  // The same pieces on other squares, from the other end.
  other({ placement: 'rnbqkbnr/pppppppp/nnnnnnnn/8/8/NNNNNNNN/PPPPPPPP/RNBQKBNR' });
  expect(Buffer.compare(other(full).indices, first)).toBe(0);
});

test('a board with an arrow, or a very small one, is drawn as a whole', async () => {
  expect(await boardJob(withArrow, { width: 320, scale: 2 }).draw()).toContain('<svg');
  expect(await boardJob(plain, { width: narrowest - 1 }).draw()).toContain('<svg');
});

test('a key tells apart whatever a board shows, and nothing else', () => {
  const keyOf = (picture: Parameters<typeof boardJob>[0]) => boardJob(picture, { width: 320 }).key;
  const others = [
    plain,
    withArrow,
    { ...plain, placement: '8/8/8/8/8/8/8/8' },
    { ...plain, view: 'black' },
    { ...plain, coordinates: false },
    { ...plain, marks: [] },
    { ...plain, lastMove: { from: 'e2', to: 'e1' } },
    { ...plain, turn: 'white' },
    { ...plain, turn: 'black' },
  ] as const;
  expect(new Set(others.map(keyOf)).size).toBe(others.length);
  const same = {
    ...plain,
    placement: `${middlegame} w - - 0 1`,
    view: 'white',
    title: 'x',
  } as const;
  expect(keyOf(same)).toBe(keyOf(plain));
});
