import { expect, test } from 'vitest';
import { reportText } from './report-text.ts';
import { courseText, finding } from './testing/finding.ts';

const report = (text: string, words: string, more = {}) =>
  reportText([{ ...finding(text, words), ...more }], {
    textOf: courseText(text),
    color: false,
  });

test('place, sentence, source line with carets, hint, related places and a count', () => {
  const text = '1. e4\n1. d5 e5\n';
  const related = [{ place: finding(text, 'e4').place, message: 'the other line' }];
  expect(report(text, 'd5', { hint: 'Write d4.', related })).toBe(
    [
      'a.md:2:4  error  some-rule',
      '  It is wrong.',
      '  2 | 1. d5 e5',
      '    |    ^^',
      '  hint: Write d4.',
      '  see: a.md:1:4  the other line',
      '  1 | 1. e4',
      '    |    ^^',
      '',
      '1 error',
      '',
    ].join('\n'),
  );
});

test('a published handbook is named below each finding', () => {
  const handbook = 'https://example.org/book/';
  const options = { textOf: () => undefined, color: false, handbook };
  expect(reportText([finding('x', 'x')], options)).toContain(
    '  It is wrong.\n  help: https://example.org/book/rules.html#some-rule\n',
  );
});

test('counts errors and warnings apart', () => {
  const one = finding('x', 'x');
  const list = [one, { ...one, severity: 'warning' as const }, one];
  expect(reportText(list, { textOf: () => undefined, color: false })).toMatch(
    /\n2 errors, 1 warning\n$/,
  );
  expect(reportText([], { textOf: () => undefined, color: false })).toBe('No findings.\n');
});

test('a long line is cut around the words, and the carets still stand under them', () => {
  const text = `${'a '.repeat(300)}WRONG${' b'.repeat(300)}`;
  const lines = report(text, 'WRONG').split('\n');
  const [source = '', carets = ''] = lines.filter((line) => line.includes(' | '));
  expect(source.length).toBeLessThan(120);
  expect(source.slice(carets.indexOf('^'), carets.lastIndexOf('^') + 1)).toBe('WRONG');
});

test('a tab takes one column, lines may end with a lone CR', () => {
  const lines = report('one\r\ttwo WRONG\rthree', 'WRONG').split('\n');
  expect(lines.slice(2, 4)).toEqual(['  2 |  two WRONG', '    |      ^^^^^']);
});

test('control characters of a file do not reach the terminal', () => {
  expect(report('\u001b[31m WRONG', 'WRONG')).not.toContain('\u001b');
});

test('colours only where asked for', () => {
  const text = 'WRONG';
  const colored = reportText([finding(text, 'WRONG')], { textOf: courseText(text), color: true });
  expect(colored).toContain('\u001b[');
  expect(report(text, 'WRONG')).not.toContain('\u001b[');
});
