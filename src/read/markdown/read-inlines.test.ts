import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../../tests/setup/runs.ts';
import { createLocator } from '../../diagnostics/index.ts';
import { readInlines } from './markdown.ts';

/** Signs that mean something in Markdown, in blocks too. */
const comment = fc
  .array(
    fc.constantFrom(
      ...['a', ' ', '  ', '\n', '\n\n', '\r\n', '\r', '\t', '*', '_', '`', '``', '<', '>', '&amp;'],
      ...[
        '[',
        ']',
        '(x)',
        '[a]: b',
        '[^a]: b',
        ':here[',
        ':',
        '\\',
        '# ',
        '---',
        '===',
        '```\n',
        '> ',
      ],
      ...['1. ', '- ', '<b>', '<!--', '\uFEFF', '| a |\n| - |'],
    ),
    { maxLength: 12 },
  )
  .map((signs) => signs.join(''));

test('comments that are parsed together are read as each is alone', () => {
  fc.assert(
    fc.property(fc.array(comment, { maxLength: 5 }), (comments) => {
      const texts = comments.map((text) => ({ text, pointAt: createLocator(text) }));
      expect(readInlines(texts)).toEqual(texts.map((text) => readInlines([text])[0]));
    }),
    { numRuns: runs(1000) },
  );
});

test('the limit of signs is one of each comment', () => {
  const texts = ['['.repeat(301), '*a* ['].map((text) => ({ text, pointAt: createLocator(text) }));
  const [long = [], short = []] = readInlines(texts);
  expect(long.map(({ type }) => type)).toEqual(['text', 'excess']);
  expect(short.map(({ type }) => type)).toEqual(['emphasis', 'text']);
});
