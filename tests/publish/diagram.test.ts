/** Pictures of single positions: found by name, FEN or moves, read back with another decoder. */
import { parseFen as parseTheirFen } from 'chessops/fen';
import { PNG } from 'pngjs';
import { describe, expect, test } from 'vitest';
import { loadCourse } from '../../src/cli/load-course.ts';
import {
  makeDiagram,
  positionAfter,
  positionOfFen,
  positionOfLabel,
  rasterize,
} from '../../src/publish/diagram/index.ts';

const plain = {
  view: 'white',
  coordinates: true,
  marks: [],
  arrows: [],
  language: 'en',
  theme: 'two-tone',
  size: 560,
} as const;

describe('the position', () => {
  test('after moves is the one that chessops knows', () => {
    const { position, lastMove } = positionAfter('1. d4 d5 2. c4');
    expect(position.fen).toBe('rnbqkbnr/ppp1pppp/8/3p4/2PP4/8/PP2PPPP/RNBQKBNR b KQkq - 0 2');
    expect(parseTheirFen(position.fen).isOk).toBe(true);
    expect(lastMove).toEqual({ from: 'c2', to: 'c4' });
  });

  test('of a name is that of the course', async () => {
    const { checked } = await loadCourse('demo-course');
    if (checked === undefined) throw new Error('the course has errors');
    expect(positionOfLabel(checked, 'tabiya').position.key).toBe(
      'r1bq1rk1/pp2bppp/2n2n2/2pp4/3P4/2N2NP1/PP2PPBP/R1BQ1RK1 w - -',
    );
    expect(() => positionOfLabel(checked, 'tabya')).toThrow('no position of the course is named');
    expect(() => positionOfLabel(checked, 'constructor')).toThrow('no position');
  });

  test.each([
    ['1. d4 d5 2. c5', '`c5` cannot be played'],
    ['', 'no moves are given'],
    ['1. e4 {', 'This comment is opened here and never closed.'],
  ])('after %j is refused', (moves, message) => {
    expect(() => positionAfter(moves)).toThrow(message);
  });

  test('of a broken FEN is refused at its place', () => {
    expect(() => positionOfFen('rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBN w KQkq - 0 1')).toThrow(
      'rank 1 has 7 squares instead of eight (at `RNBQKBN`)',
    );
  });
});

test('the words are those of the course, in its language', async () => {
  const caption = 'Nach dem dritten Zug';
  const found = positionAfter('1. d4');
  const made = await makeDiagram({ ...plain, ...found, caption, language: 'de' });
  expect(made.alt).toMatch(/^Nach dem dritten Zug\. Weiß: .* Schwarz am Zug\.$/);
  const board = await makeDiagram({ ...plain, ...found });
  // Within a page an SVG is named by its title.
  expect(made.svg).toContain(`<title>${caption}</title>`);
  expect(board.svg).toContain('<title>Black to move</title><desc>White: ');
  const height = (picture: typeof made) =>
    PNG.sync.read(Buffer.from(rasterize(picture, 280, 2))).height;
  expect(height(board)).toBe(560);
  expect(height(made)).toBeGreaterThan(560);
});

test('the same request gives the same bytes, a few of them', async () => {
  const found = positionAfter('1. d4 d5 2. c4 e6 3. Nc3 c5');
  const draw = async () => rasterize(await makeDiagram({ ...plain, ...found }), 560, 2);
  const [one, two] = [await draw(), await draw()];
  expect(Buffer.from(one).equals(two)).toBe(true);
  expect(one.length).toBeLessThan(26_000);
});
