import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runs } from '../../tests/setup/runs.ts';
import { applyFixes } from './apply-fixes.ts';
import { createLocator, lineStarts } from './locate.ts';
import { createSuggester, nearestName } from './nearest-name.ts';
import { reportJson } from './report-json.ts';
import { sortDiagnostics } from './sort-diagnostics.ts';
import { finding } from './testing/finding.ts';

describe('createLocator', () => {
  // CommonMark 0.31.2, 2.1: a line ends at LF, at CR that no LF follows, or at CR LF.
  test.each([
    ['a\nb', [0, 2]],
    ['a\r\nb', [0, 3]],
    ['a\rb', [0, 2]],
    ['\r\r\n\n', [0, 1, 3, 4]],
    ['a\u2028b', [0]],
    ['', [0]],
  ])('lines of %j', (text, starts) => {
    expect(lineStarts(text)).toEqual(starts);
  });

  test('columns are UTF-16 units from 1', () => {
    expect(createLocator('a\n😀b')(4)).toEqual({ line: 2, column: 3, offset: 4 });
  });

  test('line and column lead back to the offset', () => {
    const text = fc
      .array(fc.constantFrom('a', '\n', '\r', '😀', '\r\n'))
      .map((all) => all.join(''));
    fc.assert(
      fc.property(text, (any) => {
        const locate = createLocator(any);
        const starts = lineStarts(any);
        for (let offset = 0; offset <= any.length; offset++) {
          const { line, column } = locate(offset);
          expect((starts[line - 1] ?? Number.NaN) + column - 1).toBe(offset);
        }
      }),
      { numRuns: runs(60) },
    );
  });
});

describe('applyFixes', () => {
  const fix = (text: string, words: string, right: string) => ({
    place: finding(text, words).place,
    text: right,
  });

  test('changes the words named and nothing else', () => {
    const text = '1. e4\r\n2. Nf3 e5\t';
    expect(applyFixes(text, [fix(text, 'Nf3', 'Nf3+'), fix(text, '1.', '7.')])).toBe(
      '7. e4\r\n2. Nf3+ e5\t',
    );
  });

  test('of two that overlap makes the first only', () => {
    const text = 'Ngf3+';
    expect(applyFixes(text, [fix(text, 'gf3', 'f3'), fix(text, 'Ngf', 'N')])).toBe('N3+');
  });
});

test.each([
  ['mian', ['main', 'other'], 'main'],
  ['MAIN', ['main'], 'main'],
  ['quiet-exchage', ['quiet', 'quiet-exchange'], 'quiet-exchange'],
  ['z', ['a', 'b'], undefined],
  ['', ['a'], undefined],
  ['wholly', ['different'], undefined],
])('the name nearest to %j', (name, candidates, nearest) => {
  expect(nearestName(name, candidates)).toBe(nearest);
});

test('names are compared up to a number, and long ones not at all', () => {
  const suggest = createSuggester(Array.from({ length: 1000 }, (_, index) => `name-${index}x`));
  expect(suggest('nam-7x')).toBe('name-7x');
  for (let index = 1; index < 1000; index++) suggest(`other-${index}`);
  expect(suggest('nme-8x')).toBeUndefined();
  // What was answered once is answered so again.
  expect(suggest('nam-7x')).toBe('name-7x');
  expect(nearestName('a'.repeat(101), ['a'.repeat(100)])).toBeUndefined();
  expect(nearestName('a'.repeat(100), ['a'.repeat(99)])).toBe('a'.repeat(99));
});

test('findings are sorted by file, place and rule', () => {
  const text = 'one two';
  const one = finding(text, 'one');
  const two = { ...one, place: finding(text, 'two').place };
  const other = { ...one, place: { ...one.place, file: 'A.md' } };
  const rule = { ...one, rule: 'a-rule' };
  expect(sortDiagnostics([two, one, rule, other])).toEqual([other, rule, one, two]);
});

test('JSON has the shape that tools read, and no hint where there is none', () => {
  const one = finding('one', 'one');
  const related = [{ place: one.place, message: 'there' }];
  const start = { line: 1, column: 1 };
  const end = { line: 1, column: 4 };
  expect(JSON.parse(reportJson([one, { ...one, hint: 'Do so.', related }]))).toEqual({
    version: 1,
    diagnostics: [
      {
        rule: 'some-rule',
        severity: 'error',
        file: 'a.md',
        start,
        end,
        message: 'It is wrong.',
        related: [],
      },
      {
        rule: 'some-rule',
        severity: 'error',
        file: 'a.md',
        start,
        end,
        message: 'It is wrong.',
        hint: 'Do so.',
        related: [{ file: 'a.md', start, end, message: 'there' }],
      },
    ],
  });
});
