import fc from 'fast-check';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { describe, expect, test } from 'vitest';
import { runs } from '../../../tests/setup/runs.ts';
import { parseMarkdown, remarkCourse } from './remark-course.ts';

const whole = unified().use(remarkParse).use(remarkCourse);

/** Signs that mean something in Markdown, above all those of tables. */
const text = fc
  .array(
    fc.constantFrom(
      '|',
      '-',
      ':',
      ' ',
      '\n',
      'a',
      '> ',
      '* ',
      '1. ',
      '\\',
      '---',
      '`',
      '[^a]',
      '[^a]: b',
    ),
    {
      maxLength: 30,
    },
  )
  .map((signs) => signs.join(''));

test('where no table can begin none is looked for, and nothing else changes', () => {
  fc.assert(
    fc.property(text, (markdown) => {
      expect(parseMarkdown(markdown)).toEqual(whole.parse(markdown));
    }),
    { numRuns: runs(2000) },
  );
});

describe('a table', () => {
  test.each(['| a |\n| - |', 'a\n:-', 'a\n-:', '> a\n> :-:', '* a\n  |-'])('%j', (markdown) => {
    const tree = parseMarkdown(markdown);
    expect(tree).toEqual(whole.parse(markdown));
    expect(JSON.stringify(tree)).toContain('"type":"table"');
  });
});
