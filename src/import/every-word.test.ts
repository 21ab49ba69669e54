/** Every word of a PGN file stands in the draft or in its notes, however messy the file is. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../tests/setup/runs.ts';
import { createArchiveReader } from '../movetext/index.ts';
import { makeDraft, writeNotes } from './index.ts';

/** Pieces of files; each `@` becomes a word of its own. */
const piece = fc.constantFrom(
  ...[
    '1. e4',
    'e5',
    '2. Nf3',
    'Nc6',
    '3. Bb5',
    'd4',
    'd5',
    '7. c4',
    'Ke9',
    '--',
    'exd5 e.p.',
    '0-0',
  ],
  ...[
    '{@}',
    '{@ [%clk 0:01] @}',
    ';@ {@\n',
    '{@ {@} @}',
    '{',
    '}',
    '(',
    ')',
    '()',
    '(1. d4 {@} d5)',
  ],
  ...['(', ')', '1-0', '0-1', '*', '1/2-1/2', '$1', '$999', '!?', '!!!', '<@>', '@', '@ @', '%@ @'],
  ...[
    '\n%@ @\n',
    '\n',
    '\n\n',
    '\r\n\r\n',
    '\n\n[White "@"]\n',
    '[Black "@ @"]',
    '[White "@"]\n\n',
  ],
  ...[
    '\n\n[A-B "@"]\n\n',
    '[Result "1-0"]\n\n',
    '\n[Event\n"@"\n]\n\n',
    '[FEN "@"]\n\n',
    '[Broken "@',
  ],
  ...['\n[Variant "@"]\n\n', '\n\n[SetUp "1"]\n[FEN "4k3/8/8/8/8/8/4P3/4K3 w - - 5 39"]\n\n', 'e4'],
);

/** `qaz`, `qbz`: no two are alike, and none holds another. */
function name(index: number): string {
  const letters = index
    .toString(26)
    .replace(/./g, (digit) => 'abcdefghijklmnopqrstuvwxyz'[parseInt(digit, 26)] ?? '');
  return `q${letters}z`;
}

test('of random files', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(piece, { maxLength: 40 }),
      fc.constantFrom('game', 'branch'),
      async (pieces, by) => {
        let count = 0;
        const pgn = pieces.join(' ').replace(/@/g, () => name(count++));
        const parts = (async function* parts() {
          const reader = createArchiveReader();
          yield* [...reader.push(new TextEncoder().encode(pgn))];
          yield* reader.end();
        })();
        const draft = await makeDraft(parts, { by: by as 'game', side: 'both', title: 'x' });
        const text = [...draft.files.map((file) => file.text), writeNotes('x', draft.notes)].join(
          '\n',
        );
        const words = new Set(text.match(/q[a-z]+z/g));
        const lost = Array.from({ length: count }, (_, index) => name(index)).filter(
          (word) => !words.has(word),
        );
        expect(lost).toEqual([]);
      },
    ),
    { numRuns: runs(300) },
  );
});
