/** PGN standard, 8.2.3.7: what an import may mend of a move's spelling, and what it may not. */
import { expect, test } from 'vitest';
import { initialPosition, isFenFault, isMoveFault, parseFen, playForgiving } from './index.ts';

const start = initialPosition.fen;
const taking = '4k3/8/8/8/3p4/2n5/1P1N4/B3K3 w - - 0 1';

test.each([
  [start, 'nf3', 'Nf3'],
  [start, 'Nf3', 'Nf3'],
  ['rnbqkbnr/ppp1pppp/8/3p4/4P3/8/PPPP1PPP/RNBQKBNR w KQkq d6 0 2', 'ed5', 'exd5'],
  // A small b is a file: the pawn takes.
  [taking, 'bxc3', 'bxc3'],
  [taking, 'bc3', 'bxc3'],
  ['4k3/8/8/8/8/2n5/3B4/4K3 w - - 0 1', 'Bc3', 'Bxc3'],
])('%s: %s is %s', (fen, written, san) => {
  const position = parseFen(fen);
  if (isFenFault(position)) throw new Error(position.reason);
  expect(playForgiving(position, written)).toMatchObject({ san });
});

test.each([
  // Letters of other languages, a capture of nothing, a bishop written small.
  [start, 'Sf3'],
  [start, 'Nxf3'],
  ['4k3/8/8/8/8/2n5/3B4/4K3 w - - 0 1', 'bxc3'],
  // Two knights could.
  ['4k3/8/8/3p4/8/2N1N3/8/4K3 w - - 0 1', 'nd5'],
])('%s: %s is not guessed', (fen, written) => {
  const position = parseFen(fen);
  if (isFenFault(position)) throw new Error(position.reason);
  expect(isMoveFault(playForgiving(position, written))).toBe(true);
});
