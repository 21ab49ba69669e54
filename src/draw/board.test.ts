import type { Board } from 'chessops/board';
import { parseFen } from 'chessops/fen';
import { PNG } from 'pngjs';
import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { type Color, colors, type Piece, pieceKinds } from '../chess/types.ts';
import { type BoardFile, drawBoard } from './board.ts';
import { themes } from './paint.ts';
import { makePng } from './png/png.ts';

/** Positions 1 to 5 of the perft tables (Chess Programming Wiki, "Perft Results"). */
const published = [
  'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1',
  'r3k2r/p1ppqpb1/bn2pnp1/3PN3/1p2P3/2N2Q1p/PPPBBPPP/R3K2R w KQkq - 0 1',
  '8/2p5/3p4/KP5r/1R3p1k/8/4P1P1/8 w - - 0 1',
  'r3k2r/Pppp1ppp/1b3nbN/nP6/BBP1P3/q4N2/Pp1P2PP/R2Q1RK1 w kq - 0 1',
  'rnbq1k1r/pp1Pbppp/2p5/8/2B5/8/PPP1NnPP/RNBQK2R w KQ - 1 8',
];

/** A square of this width tells pieces apart, and takes a quarter of the time of one that is twice as wide. */
const width = 280;

/** Pressed as little as can be: the pixels are the same. */
function pixels(board: BoardFile, size = width): PNG {
  const png = makePng(drawBoard({ ...board, size }), { width: size, level: 1 });
  return PNG.sync.read(Buffer.from(png));
}

/** The luminance of a tile's pixels, 0 to 255, without its outermost pixels. */
function tileAt(image: PNG, column: number, row: number): Float64Array {
  // A board is 87.5 units wide, a square 10; the first starts after 6 and 1.5.
  const unit = image.width / 87.5;
  const left = Math.round((6 + 10 * column) * unit);
  const top = Math.round((1.5 + 10 * row) * unit);
  const tile = 10 * unit;
  const found = new Float64Array((tile - 4) ** 2);
  let count = 0;
  for (let y = 2; y < tile - 2; y += 1) {
    for (let x = 2; x < tile - 2; x += 1) {
      const at = 4 * ((top + y) * image.width + left + x);
      const [red = 0, green = 0, blue = 0] = image.data.subarray(at, at + 3);
      found[count++] = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    }
  }
  return found;
}

function difference(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let index = 0; index < a.length; index += 1) sum += ((a[index] ?? 0) - (b[index] ?? 0)) ** 2;
  return sum;
}

const share = (values: ArrayLike<number>, dark: (value: number) => boolean) =>
  Array.from(values).filter(dark).length / values.length;

const kindsInAtlas = ['pawn', 'knight', 'bishop', 'rook', 'queen', 'king'] as const;
const everyPiece: Piece[] = colors.flatMap((color) =>
  kindsInAtlas.map((kind) => ({ color, kind })),
);

/** How each piece, and no piece, looks on a light and on a dark square: from a board with two of each. */
function atlas(theme: BoardFile['theme']) {
  // Neighbours in a row: the first of two stands on a light square, or the second.
  const image = pixels({ placement: 'PPNNBBRR/QQKKppnn/bbrrqqkk/8/8/8/8/8', theme });
  return [undefined, ...everyPiece].map((piece, index) => {
    const at = piece ? 2 * (index - 1) : 24;
    const row = Math.floor(at / 8);
    const seen = [at % 8, (at % 8) + 1].map((column) => tileAt(image, column, row));
    const [light, dark] = row % 2 === 0 ? seen : seen.reverse();
    if (!light || !dark) throw new Error('two squares');
    return { name: piece ? `${piece.color} ${piece.kind}` : '', light, dark };
  });
}

/** What chessops, an independent reader, finds on the square seen at a column and a row. */
function expectedAt(board: Board, view: Color, column: number, row: number): string {
  const square = view === 'white' ? (7 - row) * 8 + column : row * 8 + (7 - column);
  const piece = board.get(square);
  return piece ? `${piece.color} ${piece.role}` : '';
}

describe('the picture shows the position', () => {
  for (const theme of themes) {
    const known = atlas(theme);
    for (const view of colors) {
      test.each(published)(`${theme}, seen by ${view}: %s`, (fen) => {
        const image = pixels({ placement: fen, view, theme });
        const position = parseFen(fen).unwrap().board;
        const wrong: string[] = [];
        for (let row = 0; row < 8; row += 1) {
          for (let column = 0; column < 8; column += 1) {
            const seen = tileAt(image, column, row);
            const shade = (row + column) % 2 === 0 ? 'light' : 'dark';
            const [best] = known
              .map((entry) => ({ name: entry.name, far: difference(entry[shade], seen) }))
              .sort((a, b) => a.far - b.far);
            const there = expectedAt(position, view, column, row);
            if (best?.name !== there) wrong.push(`${column} ${row}: ${best?.name}, not ${there}`);
          }
        }
        expect(wrong).toEqual([]);
      });
    }
  }
});

test('a black piece has far more ink than the white one, and a bare square none', () => {
  const ink = new Map(
    atlas('print').map(({ name, light }) => [name, share(light, (value) => value < 64)]),
  );
  expect(ink.get('')).toBe(0);
  for (const kind of pieceKinds) {
    const white = ink.get(`white ${kind}`) ?? 0;
    expect(white, kind).toBeGreaterThan(0.05);
    expect(ink.get(`black ${kind}`), kind).toBeGreaterThan(white * 1.3);
  }
});

test('arrows of the three meanings differ in one colour', () => {
  const images = (['plan', 'threat', 'guard'] as const).map((meaning) =>
    pixels(
      {
        placement: '8/8/8/8/8/8/8/8',
        theme: 'print',
        arrows: [{ meaning, from: 'b2', to: 'b7' }],
      },
      560,
    ),
  );
  // The middle of the shaft, on b4 and b5: solid, dashed, dotted have less and less ink.
  const ink = images.map((image) =>
    share(
      [...tileAt(image, 1, 3), ...tileAt(image, 1, 4)].filter((_, index) => {
        const x = index % 60;
        return x > 24 && x < 36;
      }),
      (value) => value < 64,
    ),
  );
  const [plan = 0, threat = 0, guard = 0] = ink;
  expect(plan).toBeGreaterThan(threat * 1.25);
  expect(threat).toBeGreaterThan(guard * 1.25);
  expect(guard).toBeGreaterThan(0);
});

test('marks and the last move show on every square they name', () => {
  const plain = pixels({ placement: '8/8/8/8/8/8/8/8', theme: 'print' });
  const image = pixels({
    placement: '8/8/8/8/8/8/8/8',
    theme: 'print',
    marks: ['e5'],
    lastMove: { from: 'a1', to: 'c4' },
  });
  const changed: string[] = [];
  for (let row = 0; row < 8; row += 1) {
    for (let column = 0; column < 8; column += 1) {
      if (difference(tileAt(plain, column, row), tileAt(image, column, row)) > 250_000) {
        changed.push(`${'abcdefgh'.charAt(column)}${8 - row}`);
      }
    }
  }
  expect(changed.sort()).toEqual(['a1', 'c4', 'e5']);
});

test('the same board gives the same bytes', () => {
  const board = { placement: published[1] ?? '', marks: ['e5'], theme: 'dark' } as const;
  expect(drawBoard(board)).toBe(drawBoard({ ...board }));
  expect(makePng(drawBoard(board), { width })).toEqual(makePng(drawBoard(board), { width }));
});

test('the file is well-formed XML whatever its words hold', () => {
  const words = `"Knight's" <b> & ]]> – 象棋 ♞`;
  let title = '';
  const parser = new SaxesParser({ xmlns: true });
  parser.on('error', (error) => expect.fail(error.message));
  parser.on('text', (text) => {
    title += text.trim();
  });
  parser
    .write(
      drawBoard({
        placement: published[3] ?? '',
        title: words,
        marks: ['a1'],
        arrows: [{ meaning: 'guard', from: 'a1', to: 'h8' }],
        turn: 'black',
      }),
    )
    .close();
  expect(title).toBe(words);
});

test.each([0, -1, 31, 50_000, Number.NaN, Number.POSITIVE_INFINITY])(
  'a board of %s pixels is refused',
  (size) => {
    expect(() => drawBoard({ placement: published[0] ?? '', size })).toThrow(
      `a board cannot be ${size} pixels wide: give a number from 32 to 4096`,
    );
  },
);

test.each([
  ['8/8/8', 'the placement "8/8/8" has 3 ranks instead of 8'],
  ['8/8/8/8/8/8/8/9', '"9" on rank 1 of the placement is no piece'],
  ['8/8/7/8/8/8/8/8', 'rank 6 of the placement, "7", has 7 squares, not 8'],
  ['8/8/8/8/8/8/8/ppppppppp', 'rank 1 of the placement, "ppppppppp", has 9 squares, not 8'],
  ['', 'the placement "" has 1 ranks instead of 8'],
])('the placement %j is refused', (placement, message) => {
  expect(() => drawBoard({ placement })).toThrow(message);
});

test('squares and arrows that cannot be are refused', () => {
  const board = { placement: '8/8/8/8/8/8/8/8' };
  expect(() => drawBoard({ ...board, marks: ['e9'] })).toThrow('"e9" is no square');
  expect(() =>
    drawBoard({ ...board, arrows: [{ meaning: 'plan', from: 'e4', to: 'e4' }] }),
  ).toThrow('an arrow from e4 to e4 leads nowhere');
  expect(() => drawBoard({ ...board, title: 'a\u0000' })).toThrow('control character U+0000');
});
