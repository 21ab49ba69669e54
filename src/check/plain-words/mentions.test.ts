import { expect, test } from 'vitest';
import { isSameMove } from './mentions.ts';

// PGN standard, 8.2.3.3 and 8.2.3.5: castling is written with the letter O, checks may have a sign. Common practice,
// no source: sentences castle with zeros and leave out what is taken.
test.each([
  ['0-0', 'O-O', true],
  ['0-0-0', 'O-O-O+', true],
  ['0-0', 'O-O-O', false],
  ['Nd5', 'Nxd5+', true],
  ['Nd5', 'Bd5', false],
])('%s and %s', (one, other, same) => {
  expect(isSameMove(one, other)).toBe(same);
});
