import { PNG } from 'pngjs';
import { describe, expect, test } from 'vitest';
import { makePng } from '../png/png.ts';
import { drawCaptionedBoard } from './caption.ts';
import { type Card, cardJob, cardSize, drawCard } from './card.ts';
import { setText, textBox } from './set-text.ts';
import { showable } from './showable.ts';

const position = { placement: '8/8/8/3k4/8/3K4/8/8', view: 'white' } as const;

/** The lowest and rightmost pixels of words right of the board, which are light on the cloth, or zeros. */
function inkOfText(png: Uint8Array) {
  const { data, width, height } = PNG.sync.read(Buffer.from(png));
  let [right, bottom, inked] = [0, 0, 0];
  for (let y = 0; y < height; y += 1) {
    for (let x = 600; x < width; x += 1) {
      // Green: the cloth has little of it, words have much.
      if ((data[(y * width + x) * 4 + 1] ?? 0) > 128) {
        inked += 1;
        right = Math.max(right, x);
        bottom = Math.max(bottom, y);
      }
    }
  }
  return { width, height, right, bottom, inked };
}

async function makeCard(card: Card, onLoss?: (message: string) => void): Promise<Uint8Array> {
  const job = cardJob(card, onLoss);
  if (!('draw' in job)) throw new Error('a card is drawn late');
  return makePng(await job.draw(), job);
}

test.each([
  ['short', 'Plans'],
  ['Cyrillic', 'Изолированная пешка и контригра чёрных'],
  ['Greek', 'Η απομονωμένη πιόνι'],
  ['long', 'what happens when Black keeps the tension and captures late '.repeat(8)],
  ['one long word', 'Bauernendspielgrundstellungsüberlegungen'.repeat(2)],
])('a %s title stands within the card', async (_kind, chapter) => {
  const losses: string[] = [];
  const card = { course: 'A course', chapter, author: 'Mira Lindqvist', ...position };
  const ink = inkOfText(await makeCard(card, (message) => losses.push(message)));
  expect(losses).toEqual([]);
  expect([ink.width, ink.height]).toEqual([1200, 630]);
  expect(ink.inked).toBeGreaterThan(2000);
  expect(ink.right).toBeLessThan(1200 - 40);
  expect(ink.bottom).toBeLessThan(630 - 40);
});

test('a card cut to fit keeps as many words as fit, and letters where not even one word does', async () => {
  const inkOf = async (chapter: string) =>
    inkOfText(await makeCard({ course: 'A course', chapter, ...position }));
  const many = await inkOf('what happens when Black keeps the tension '.repeat(50));
  const one = await inkOf('Zugzwang'.repeat(100));
  for (const { bottom, inked } of [many, one]) {
    expect(bottom).toBeGreaterThan(350);
    expect(bottom).toBeLessThan(630 - 40);
    expect(inked).toBeGreaterThan(10_000);
  }
});

test('descenders that leave the last line are whole', async () => {
  /** The last row that has ink from a column on. */
  const lastRow = (png: Uint8Array, from: number, isInked: (green: number) => boolean) => {
    const { data, width, height } = PNG.sync.read(Buffer.from(png));
    const isInk = (y: number) =>
      Array.from({ length: 200 }, (_, i) => data[(y * width + from + i) * 4 + 1] ?? 255).some(
        isInked,
      );
    return Math.max(...Array.from({ length: height }, (_, y) => y).filter(isInk));
  };
  // Right of the rules below the title.
  const onCard = async (chapter: string) =>
    lastRow(await makeCard({ course: '', chapter, ...position }), 760, (green) => green > 128);
  const alone = async (text: string) => {
    const style = { fontSize: 74, fontWeight: 600, padding: '60px 0', letterSpacing: 74 * -0.012 };
    return lastRow(
      makePng((await setText(textBox(style, text), 600, 300)).svg, { width: 600 }),
      0,
      (green) => green < 128,
    );
  };
  const [low, deep] = ['xxxxxxxxx', 'ppppppppp'];
  expect((await onCard(deep)) - (await onCard(low))).toBe((await alone(deep)) - (await alone(low)));
});

test.each(['white', 'black'] as const)(
  'a card seen from %s is its SVG, pixel for pixel',
  async (view) => {
    const placement = 'rnbqkbnr/ppp1pppp/8/3p4/2PP4/8/PP2PPPP/RNBQKBNR';
    const card = { course: 'A course', chapter: 'Plans', author: 'Mira', placement, view };
    const png = PNG.sync.read(Buffer.from(await makeCard(card)));
    const drawn = PNG.sync.read(Buffer.from(makePng(await drawCard(card), cardSize)));
    let strays = 0;
    for (const [i, byte] of png.data.entries()) {
      if (Math.abs(byte - (drawn.data[i] ?? 0)) > 40) strays += 1;
    }
    expect(strays / png.data.length).toBeLessThan(0.0005);
  },
);

test('what the fonts lack is left out and told', async () => {
  const losses: string[] = [];
  const onLoss = (message: string) => losses.push(message);
  const foreign = await drawCard({ course: 'Tarrasch', chapter: '第一章', ...position }, onLoss);
  expect(losses).toEqual([
    'the line "第一章" is left out of the picture: its fonts have no "第", "一", "章"',
  ]);
  expect(foreign).toBe(await drawCard({ course: 'Tarrasch', ...position }));
  const alone = await makeCard({ course: '国际象棋', ...position });
  const bare = await makeCard({ course: '', ...position });
  expect(Buffer.from(alone).equals(Buffer.from(bare))).toBe(true);
});

describe('showable', () => {
  test.each([
    ['Żółć, Đặng, Ελλάς — “½”', 'Żółć, Đặng, Ελλάς — “½”', 0],
    ['  two \n lines ', 'two lines', 0],
    ['e\u0301tude', 'étude', 0],
    ['Ｔｉｔｌｅ', 'Title', 0],
    ['Plans 😀 for ♘f3', 'Plans for f3', 1],
    ['שלום', '', 1],
    ['', '', 0],
  ])('%j is shown as %j', async (line, shown, losses) => {
    let told = 0;
    const count = () => {
      told += 1;
    };
    expect(await showable(line, count)).toBe(shown);
    expect(told).toBe(losses);
  });
});

test('a caption stands below the board, in outlines, and the picture grows with it', async () => {
  const board = { placement: position.placement, size: 300 };
  const one = await drawCaptionedBoard(board, { text: 'White to move' });
  const many = await drawCaptionedBoard(board, { text: 'White to move '.repeat(12) });
  const [low, high] = [one, many].map((svg) => {
    const { height, data } = PNG.sync.read(Buffer.from(makePng(svg, { width: 300 })));
    let dark = 0;
    for (let i = 300 * 300 * 4; i < data.length; i += 4) if ((data[i] ?? 255) < 128) dark += 1;
    return { height, dark };
  });
  expect(low?.height).toBeGreaterThan(310);
  expect(low?.dark).toBeGreaterThan(100);
  expect(high?.height).toBeGreaterThan((low?.height ?? 0) + 30);
  expect(one).not.toContain('<text');
});
