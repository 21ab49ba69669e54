import { gzipSync } from 'node:zlib';
import { SaxesParser } from 'saxes';
import { expect, test } from 'vitest';
import { drawBoardInPage, pieceSprite } from './page-board.ts';
import { paints } from './paint.ts';

const board = {
  placement: 'r2q1rk1/pp2bppp/2n1bn2/3p4/3N4/2N3P1/PP2PPBP/R1BQ1RK1 w - - 0 1',
  view: 'black',
  title: 'After 11...Be6 & "more"',
  desc: 'White knight on d4.',
  marks: ['e5'],
  arrows: [{ meaning: 'plan', from: 'd4', to: 'e6' }],
  lastMove: { from: 'c8', to: 'e6' },
  turn: 'white',
} as const;

type Attributes = Readonly<Record<string, string>>;

/** Every element of some markup, which must be well-formed XML too. */
function elements(markup: string): { name: string; attributes: Attributes }[] {
  const found: { name: string; attributes: Attributes }[] = [];
  const parser = new SaxesParser();
  parser.on('error', (error) => expect.fail(error.message));
  parser.on('opentag', ({ name, attributes }) => found.push({ name, attributes }));
  parser.write(markup).close();
  return found;
}

test('each piece is a use of its symbol, with its square', () => {
  const pieces = elements(drawBoardInPage(board)).filter(
    ({ attributes }) => attributes['data-square'],
  );
  expect(pieces).toHaveLength(28);
  expect(pieces).toContainEqual({
    name: 'use',
    attributes: { 'data-square': 'd4', href: '#piece-wn', x: '40', y: '30' },
  });
});

test('without a title the board is hidden from assistive technology, with one it has a label', () => {
  const [hidden] = elements(drawBoardInPage({ placement: board.placement }));
  expect(hidden?.attributes['aria-hidden']).toBe('true');
  const [named] = elements(drawBoardInPage(board));
  expect(named?.attributes.role).toBe('img');
  expect(named?.attributes['aria-label']).toBe('After 11...Be6 & "more". White knight on d4.');
});

test('every reference has its symbol in the sprite, every class its paint, nothing a style', () => {
  const sprite = elements(pieceSprite());
  const ids = sprite.flatMap(({ attributes }) => attributes.id ?? []);
  expect(new Set(ids).size).toBe(ids.length);
  const boards = [board, { placement: board.placement, coordinates: false }].flatMap((one) =>
    elements(drawBoardInPage(one)),
  );
  for (const { name, attributes } of [...sprite, ...boards]) {
    if (attributes.href) expect(ids).toContain(attributes.href.slice(1));
    if (name === 'path') expect(Object.keys(paints)).toContain(attributes.class);
    expect(attributes).not.toHaveProperty('style');
  }
});

test('a further board on a page weighs little', () => {
  const placements = [
    'rnbqkb1r/ppp2ppp/4pn2/3p4/2PP4/5N2/PP2PPPP/RNBQKB1R',
    'rnbqkbnr/pp3ppp/4p3/2pp4/2PP4/2N5/PP2PPPP/R1BQKBNR',
    'r1bqk2r/pp2bppp/2n2n2/2pp4/3P4/2N2NP1/PP2PPBP/R1BQK2R',
  ];
  const sizes = placements.map(
    (_, count) =>
      gzipSync(
        placements
          .slice(0, count + 1)
          .map((placement) => drawBoardInPage({ placement }))
          .join('\n'),
      ).length,
  );
  expect((sizes[2] ?? 0) - (sizes[1] ?? 0)).toBeLessThan(250);
});
