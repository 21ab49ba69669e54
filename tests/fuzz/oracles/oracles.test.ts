/** Each oracle can fail: given what is wrong, it says so. */
import { expect, test } from 'vitest';
import type { Diagnostic } from '../../../src/diagnostics/index.ts';
import type { Oracle } from '../case.ts';
import { type CourseRun, runCourse } from './course-run.ts';
import { exactPlaces, knownRules, plainSentences, sameAgain } from './findings.ts';
import { readHtml } from './html.ts';
import { anyLineEnds, exactModel, legalPositions } from './model.ts';
import { markedPreview } from './preview.ts';
import { lastingRepairs } from './repairs.ts';
import { soundReports } from './reports.ts';
import { soundPages } from './site.ts';
import { readXml } from './xml.ts';

const chapter = '---\ntitle: One\n---\n\n```moves\n1. e4 e5 2. Nf3 😀\n```\n';
const run = runCourse({
  'course.yaml': 'title: T\nside: white\nrules: {move-suffix: off}\n',
  'chapters/1.md': chapter,
});
const finding = run.diagnostics[0] as Diagnostic;
const withFinding = (change: Partial<Diagnostic>): CourseRun => ({
  ...run,
  diagnostics: [{ ...finding, ...change }],
});

async function faults<T>(oracle: Oracle<T>, subject: T): Promise<string[]> {
  const all: string[] = [];
  for await (const message of oracle.examine(subject)) all.push(message);
  return all;
}

test('the course that the others are spoiled from is in order', async () => {
  expect(finding.rule).toBe('move-unreadable');
  for (const oracle of [sameAgain, knownRules, exactPlaces, plainSentences, lastingRepairs]) {
    expect(await faults(oracle, run)).toEqual([]);
  }
  for (const oracle of [soundReports, exactModel, legalPositions, anyLineEnds, soundPages]) {
    expect(await faults(oracle, run)).toEqual([]);
  }
});

test.each<[string, Oracle<CourseRun>, CourseRun, RegExp]>([
  [
    'another model',
    sameAgain,
    { ...run, course: { ...run.course, chapters: [] } },
    /another model/,
  ],
  [
    'a finding without a note',
    markedPreview,
    // A second chapter of the same name takes the place of its page.
    {
      ...run,
      course: {
        ...run.course,
        chapters: run.course.chapters.flatMap((each) => [each, { ...each, file: 'chapters/2.md' }]),
      },
    },
    /has 0 notes/,
  ],
  ['other findings', sameAgain, withFinding({ message: 'x' }), /other findings/],
  ['a rule that is none', knownRules, withFinding({ rule: 'x' }), /no rule `x`/],
  ['a rule that is off', knownRules, withFinding({ rule: 'move-suffix' }), /not as set/],
  [
    'errors and checked',
    knownRules,
    { ...run, checked: { course: run.course } as never },
    /or neither/,
  ],
  [
    'a value that was missing',
    plainSentences,
    withFinding({ message: 'undefined moves' }),
    /undefined/,
  ],
  ['a control character', plainSentences, withFinding({ hint: '\u001b[31m' }), /control/],
  [
    'a file that is none',
    exactPlaces,
    withFinding({ place: { ...finding.place, file: 'x' } }),
    /file/,
  ],
  [
    'half a character',
    exactPlaces,
    withFinding({
      place: { ...finding.place, end: { ...finding.place.start, ...inside(chapter, '😀') } },
    }),
    /within a character/,
  ],
  [
    'repairs that overlap and do not last',
    lastingRepairs,
    withFinding({ fixes: [fix(chapter, '1. e4', '7. e4'), fix(chapter, 'e4', 'e4')] }),
    /overlap|second run/,
  ],
  ['no SARIF', soundReports, withFinding({ severity: 'fatal' as never }), /SARIF|annotation/],
])('%s', async (_what, oracle, subject, expected) => {
  expect((await faults(oracle, subject)).join('\n')).toMatch(expected);
});

test('a move that is not legal', async () => {
  const [first] = run.course.chapters;
  const [block] = first?.blocks ?? [];
  const spoiled = JSON.parse(JSON.stringify(run.course).replaceAll('"san":"Nf3"', '"san":"Nf4"'));
  expect(block?.kind).toBe('moves');
  expect((await faults(legalPositions, { ...run, course: spoiled })).join()).toContain(
    'Nf4 is no move',
  );
});

test('a place where something else stands', async () => {
  const files = { ...run.files, 'chapters/1.md': chapter.replace('e5', 'd5') };
  expect(await faults(exactModel, { ...run, files })).not.toEqual([]);
});

test.each([
  ['<script>x</script>', 'an element <script>'],
  ['<b onclick="x">y</b>', 'an attribute onclick'],
  ['<a href="java\tscript:x">y</a>', 'a link to javascript:'],
  ['<img src="//host/x.png">', '<img src> fetches //host/x.png'],
  ['<img srcset="https://host/x 2x">', '<img srcset> fetches'],
  ['<video poster="\\\\host/x"></video>', '<video poster> fetches'],
  ['<p style="background: url(x)">y</p>', 'a style'],
  ['<p>one<p>two</p>', '<p> is not closed'],
  ['<a href="x"><a href="y">z</a></a>', '<a> is not closed'],
  ['<p title="a" title="b">y</p>', 'HTML: duplicate-attribute'],
])('HTML: %s', (html, fault) => {
  expect(readHtml(html).faults.join('\n')).toContain(fault);
});

test('HTML that is in order', () => {
  const html = '<p id="a">x <a href="https://example.org">y</a><img src="media/x.png" alt=""></p>';
  expect(readHtml(html)).toMatchObject({ faults: [], ids: ['a'] });
});

test.each(['<a>', '<a b="1" b="2"/>', '<a>\u0001</a>', '<x:a/>', '<a>&nbsp;</a>'])(
  'XML: %j',
  (xml) => expect(readXml(xml).faults).not.toEqual([]),
);

function inside(text: string, found: string) {
  const offset = text.indexOf(found) + 1;
  const before = text.slice(0, offset).split('\n');
  return { line: before.length, column: (before.at(-1) ?? '').length + 1, offset };
}

function fix(text: string, found: string, right: string) {
  const start = { ...inside(text, found) };
  const point = { ...start, column: start.column - 1, offset: start.offset - 1 };
  const end = {
    ...point,
    column: point.column + found.length,
    offset: point.offset + found.length,
  };
  return { place: { file: 'chapters/1.md', start: point, end }, text: right };
}
