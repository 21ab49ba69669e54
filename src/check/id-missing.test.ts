/** The repair of `id-missing`: the id in force is written, and nothing else of the file changes. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyFixes, type Fix } from '../diagnostics/index.ts';
import { buildCourse, type Course, courseId } from '../model/index.ts';
import { readCourse } from '../read/index.ts';
import { checkCourse } from './check-course.ts';

function courseWith(text: string): Course {
  const settings = { path: 'course.yaml', text };
  return buildCourse(readCourse({ settings, chapters: [], games: [], media: [], problems: [] }));
}

const findingsOf = (course: Course) => checkCourse(course).diagnostics;
const fixesOf = (text: string): Fix[] =>
  findingsOf(courseWith(text)).flatMap(({ fixes = [] }) => fixes);

function expectMended(text: string): void {
  const before = courseWith(text);
  const [fix, ...others] = fixesOf(text);
  if (fix === undefined) throw new Error(`nothing mends ${JSON.stringify(text)}`);
  expect(others).toEqual([]);
  expect(fix.place.start).toEqual(fix.place.end);
  const after = courseWith(applyFixes(text, [fix]));
  expect(findingsOf(after)).toEqual([]);
  expect(after.settings).toEqual({ ...before.settings, id: courseId(before) });
  const ends = (lines: string) => new Set(lines.match(/\r\n|\r|\n/g));
  if (ends(text).size > 0) expect(ends(applyFixes(text, [fix]))).toEqual(ends(text));
}

test.each([
  ['a line', 'title: A\nside: white\n', 'title: A\nid: a\nside: white\n'],
  ['Windows line ends', 'title: A\r\nside: white\r\n', 'title: A\r\nid: a\r\nside: white\r\n'],
  ['the last line, without an end', 'side: white\ntitle: A', 'side: white\ntitle: A\nid: a'],
  ['a comment behind', 'title: "A" # mine\nside: white', 'title: "A" # mine\nid: a\nside: white'],
  [
    'a text of several lines',
    'title: >-\n  The\n  A\n\n# Whom?\nside: white\n',
    'title: >-\n  The\n  A\nid: the-a\n\n# Whom?\nside: white\n',
  ],
  [
    'lines that are set in',
    '---\n  title: A\n  side: white\n...\n',
    '---\n  title: A\n  id: a\n  side: white\n...\n',
  ],
  ['braces', '{side: white, title: A}\n', '{side: white, id: a, title: A}\n'],
  ['a word of YAML', 'title: "Null"\nside: white\n', 'title: "Null"\nid: "null"\nside: white\n'],
])('%s', (_, text, mended) => {
  expect(applyFixes(text, fixesOf(text))).toBe(mended);
  expectMended(text);
});

test.each([
  ['has an id', 'title: A\nid: b\nside: white\n'],
  ['has an id that is none', 'title: A\nid: "?"\nside: white\n'],
  ['has no title', 'side: white\n'],
  ['cannot be read', 'title: "A\nside: white\n'],
])('nothing is said of a file that %s', (_, text) => {
  expect(findingsOf(courseWith(text)).filter(({ rule }) => rule === 'id-missing')).toEqual([]);
});

test('where no place is safe, the line is named and nothing is repaired', () => {
  const text = '? title\n: A\n? side\n: white\n';
  expect(findingsOf(courseWith(text))).toMatchObject([{ rule: 'id-missing' }]);
  expect(fixesOf(text)).toEqual([]);
});

const quote = (style: string, title: string) =>
  style === 'plain' ? title : style === 'block' ? `>-\n  ${title}` : JSON.stringify(title);
const settingsFile = fc
  .record({
    // Letters of any writing: an id has them too.
    title: fc.stringMatching(/^[\p{L}\p{N}][\p{L}\p{M}\p{N}\p{P}\p{Zs}]{0,30}$/u),
    style: fc.constantFrom('quoted', 'block'),
    first: fc.boolean(),
    comment: fc.constantFrom('', ' # Mine: yes'),
    blank: fc.constantFrom('', '\n', '# id: none\n'),
    indent: fc.constantFrom('', '  '),
    end: fc.constantFrom('', '\n'),
    lineBreak: fc.constantFrom('\n', '\r\n'),
  })
  .map(({ title, style, first, comment, blank, indent, end, lineBreak }) => {
    const behind = style === 'block' ? '' : comment;
    const entries = [`title: ${quote(style, title)}${behind}`, `side: black${comment}`];
    const lines = (first ? entries : entries.reverse()).join(`\n${blank}`).split('\n');
    const text = lines.map((line) => (line === '' ? '' : indent + line)).join('\n') + end;
    return text.replaceAll('\n', lineBreak);
  });

test('of any title in any style', () => {
  fc.assert(fc.property(settingsFile, expectMended), { numRuns: 300 });
});
