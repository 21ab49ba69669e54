import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../../tests/setup/runs.ts';
import { scanMove, scanPlainMove } from './scan-move.ts';

// PGN standard, 8.2.3.
test.each([
  ...['e4', 'exd5', 'Nf3', 'Nbd7', 'N5d7', 'Nb1d2', 'Nbxd2', 'Qh4+', 'Qxf7#', 'O-O', 'O-O-O+'],
  ...['e8=Q', 'exd8=N+', 'b4', 'bxc3', 'Bb5', 'R1a3', 'Rb1xa3'],
])('%s is plain before a space, a line end and the end', (move) => {
  for (const after of ['', ' ', '\n', '\r\n', ' Nf6', ' {a}', ' 2. d4', ' $1']) {
    expect(scanPlainMove(`${move}${after}`, 0)).toBe(move.length);
  }
});

test.each([
  ...[
    '1e4',
    'a12b3',
    'e9',
    'Sf3',
    '0-0',
    'e8Q',
    'e8=K',
    'exd',
    'Nf3!',
    'e4)',
    'Nf3+-',
    'O-O-',
    'N',
  ],
  ...['exd6 e.p.', 'exd6  e.p.', 'e2-e4', 'Ngf3x'],
])('%s is left to the scanner of all spellings', (text) => {
  expect(scanPlainMove(text, 0)).toBe(undefined);
});

test('what is plain is read as by the scanner of all spellings', () => {
  const part = fc.constantFrom(
    ...[
      'K',
      'Q',
      'R',
      'B',
      'N',
      'O',
      'O-O',
      '-O',
      'a',
      'b',
      'e',
      'h',
      'i',
      '1',
      '3',
      '6',
      '8',
      '9',
    ],
    ...[
      'x',
      '=',
      '=Q',
      '=K',
      '+',
      '#',
      '!',
      ' ',
      '\t',
      '\n',
      'e.p.',
      'ep',
      '(',
      '.',
      '-',
      'P',
      '½',
    ],
  );
  const text = fc.array(part, { minLength: 1, maxLength: 9 }).map((parts) => parts.join(''));
  fc.assert(
    fc.property(text, (written) => {
      const plain = scanPlainMove(written, 0);
      if (plain !== undefined) expect(plain).toBe(scanMove(written, 0));
    }),
    { numRuns: runs(20_000) },
  );
});
