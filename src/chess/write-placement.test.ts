import { expect, test } from 'vitest';
import { readPlacement } from '../draw/placement.ts';
import { writePlacement } from './write-placement.ts';

/** The examples of the PGN standard, section 16.1.4, and boards that no game reaches. */
test.each([
  'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR',
  'rnbqkbnr/pppppppp/8/8/4P3/8/PPPP1PPP/RNBQKBNR',
  'rnbqkbnr/pp1ppppp/8/2p5/4P3/8/PPPP1PPP/RNBQKBNR',
  'rnbqkbnr/pp1ppppp/8/2p5/4P3/5N2/PPPP1PPP/RNBQKB1R',
  '8/8/8/8/8/8/8/8',
  'P6p/1P4p1/8/3pp3/3PP3/8/1p4P1/p6P',
])('a placement that is read is written as it was: %s', (placement) => {
  const pieces = new Map(readPlacement(placement).map(({ square, piece }) => [square, piece]));
  expect(writePlacement(pieces)).toBe(placement);
});
