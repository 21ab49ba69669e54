import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../tests/setup/runs.ts';
import { makeMovetext, packText, parseMovetext, partsOfComment, unpackText } from './index.ts';

test.each([
  ['plain words', 'plain words'],
  ['one\n\n- two\n    three', 'one [%line 0]  [%line 0] - two [%line 4] three'],
  ['a {b}', 'a [%sign 7B]b[%sign 7D]'],
  ['a  b\t', 'a[%sign 20 20]b[%sign 9]'],
  ['[%line] [%clk 1:00]', '[%sign 5B]%line] [%clk 1:00]'],
])('%j', (text, packed) => {
  expect(packText(text)).toBe(packed);
  expect(unpackText(packed)).toBe(text);
});

const text = fc
  .array(
    fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 6 }),
      fc.constantFrom(
        ' ',
        '  ',
        '\n',
        '\n\n',
        '\n  ',
        '\t',
        '{',
        '}',
        '[%',
        '[%line]',
        '[%sign 41]',
        '[%join]',
      ),
      fc.constantFrom(
        '[%text]',
        'word',
        '%',
        '[White "A"]',
        ';',
        '\u00A0',
        'x'.repeat(450),
        '$1',
        ')',
      ),
    ),
    { maxLength: 30 },
  )
  .map((parts) => parts.join('').replace(/\r/g, ''));

test('any text comes back from a game that holds it', () => {
  fc.assert(
    fc.property(text, (each) => {
      const words = packText(each);
      const line = {
        before: [],
        moves: [
          {
            san: { text: 'e4' },
            glyphs: [],
            after: [{ type: 'comment', form: 'brace', text: words }],
          },
        ],
      } as const;
      const written = makeMovetext({ tags: [], line });
      expect(Math.max(...written.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(255);
      const [item] = parseMovetext(written).line.moves[0]?.after ?? [];
      const read = item?.type === 'comment' ? item.text : '';
      expect(unpackText(read)).toBe(each);
      expect(partsOfComment(read).every(({ name }) => name === undefined)).toBe(true);
    }),
    { numRuns: runs(300) },
  );
});

test('the parts of a comment', () => {
  expect(partsOfComment('a [%text] b c [%comment 2] d')).toEqual([
    { count: 0, text: 'a' },
    { name: 'text', count: 0, text: 'b c' },
    { name: 'comment', count: 2, text: 'd' },
  ]);
});
