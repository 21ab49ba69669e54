import { expect, test } from 'vitest';
import { readSettings } from '../settings/read-settings.ts';

/** The first problem of a `course.yaml`, with the line and column that it stands at. */
function fault(text: string): string {
  const [problem] = readSettings({ path: 'course.yaml', text }).problems;
  const { line, column } = problem?.place.start ?? {};
  return `${line}:${column} ${problem?.message}`;
}

const doubled = (name: string, from: string) => `${name}: &${name} [${`*${from}, `.repeat(9)}]\n`;

test.each([
  // Nine lines that stand for a thousand million words.
  [
    `a: &a [x, x]\n${'bcdefghi'.replace(/./g, (name) => doubled(name, String.fromCharCode(name.charCodeAt(0) - 1)))}`,
    '1:4 course.yaml cannot be read here: a value cannot begin with `&`.',
  ],
  ['title: *a\n', '1:8 course.yaml cannot be read here: a value cannot begin with `*`.'],
  ['? [a, b]\n: c\n', '1:3 course.yaml cannot be read here: a name is a list.'],
  // Each name would be written out within the one around it, with all its quotes.
  [`${'? '.repeat(60)}a\n`, '1:3 course.yaml cannot be read here: a name is a list.'],
  [
    `title: ${'['.repeat(30)}${']'.repeat(30)}\n`,
    '1:27 course.yaml cannot be read here: lists and names lie in one another more than 20 times.',
  ],
  [
    `title: ${'['.repeat(9000)}${']'.repeat(9000)}\n`,
    'course.yaml cannot be read here: brackets or hyphens lie in one another too often.',
  ],
  [
    'title: a\nside: white\n"title": b\n',
    '3:1 course.yaml cannot be read here: `"title"` is given twice.',
  ],
  [
    'title: a\nside: white\nrules: {line-repeated: off, line-repeated: off}\n',
    '3:29 course.yaml cannot be read here: `line-repeated` is given twice.',
  ],
])('%#. one finding, at its place', (text, expected) => {
  expect(fault(text)).toContain(expected);
});
