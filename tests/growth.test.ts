/**
 * The work that hostile texts cost grows no faster than they do. It is counted, not timed: V8 counts the
 * calls of every function (Profiler.takePreciseCoverage of the Chrome DevTools Protocol).
 */
import { Session } from 'node:inspector';
import { describe, expect, test } from 'vitest';
import { parseGames } from '../src/movetext/index.ts';
import { readCourse } from '../src/read/index.ts';

/** The calls of functions that `work` makes, whatever it does with them. */
function callsOf(work: () => void): number {
  const session = new Session();
  session.connect();
  try {
    session.post('Profiler.enable');
    session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: false });
    work();
    let calls = 0;
    session.post('Profiler.takePreciseCoverage', (error, { result }) => {
      if (error) throw error;
      for (const { functions } of result) {
        for (const { ranges } of functions) calls += ranges[0]?.count ?? 0;
      }
    });
    return calls;
  } finally {
    session.disconnect();
  }
}

function read(text: string): void {
  readCourse({
    settings: { path: 'course.yaml', text: 'title: A\nid: a\nside: white\n' },
    chapters: [{ path: 'chapters/1.md', text: `---\ntitle: One\n---\n\n${text}\n` }],
    games: [],
    media: [],
    problems: [],
  });
}

const chain = (count: number) =>
  Array.from({ length: count }, (_, at) => `[^${at}]: [^${at + 1}]`).join('\n\n');
const block = (text: string) => `\`\`\`moves\n${text}\n\`\`\``;

/** Texts of so many parts, as the issue on bounds names them and of their kind. */
const chapters: Readonly<Record<string, (count: number) => string>> = {
  'links that are begun': (count) => '[a]('.repeat(count),
  'pictures that are begun': (count) => '!['.repeat(count),
  'brackets within one another': (count) => '['.repeat(count),
  'a chain of footnotes': chain,
  'quotes within one another': (count) => '>'.repeat(count),
  'lists within one another': (count) => '- '.repeat(count),
  'stars that are begun': (count) => 'a *b '.repeat(count),
  'underscores and stars': (count) => '*_'.repeat(count),
  'backticks of ever more': (count) =>
    Array.from({ length: Math.sqrt(5 * count) }, (_, at) => '`'.repeat(at + 1)).join(' '),
  'tags that are begun': (count) => '<a '.repeat(count),
  'directives within one another': (count) => ':a['.repeat(count),
  'entities that are none': (count) => '&a'.repeat(count),
  'variations within one another': (count) => block(`1. e4 ${'(1. d4 '.repeat(count)}`),
  'comments that are begun': (count) => block('1. e4 {'.repeat(count)),
  'a line of a thousand moves': (count) => block('Nf3 Nf6 Ng1 Ng8 '.repeat(count)),
};

const files: Readonly<Record<string, (count: number) => string>> = {
  'brackets of tags': (count) => '['.repeat(count),
  comments: (count) => `1. e4 ${'{a} '.repeat(count)}`,
  'games of nothing': (count) => '*\n'.repeat(count),
};

/** Twice the text, twice the work: a little more is what is done once for all, and what grows by levels. */
function expectLinear(work: (count: number) => void, count = 1500): void {
  // What is loaded and prepared at the first time is no part of it.
  work(10);
  const [once, twice, fourTimes] = [count, 2 * count, 4 * count].map((each) =>
    callsOf(() => work(each)),
  ) as [number, number, number];
  expect(once).toBeGreaterThan(0);
  expect(twice / once).toBeLessThan(2.3);
  expect(fourTimes / twice).toBeLessThan(2.3);
}

describe('a chapter of', () => {
  test.each(Object.entries(chapters))('%s', (_, text) => {
    expectLinear((count) => read(text(count)));
  });
});

describe('a PGN file of', () => {
  test.each(Object.entries(files))('%s', (_, text) => {
    expectLinear((count) => void [...parseGames(text(count))]);
  });
});

test('what is quadratic is seen', () => {
  const quadratic = (count: number) => {
    const list = Array.from({ length: count / 10 }, (_, at) => at);
    for (const one of list) list.some((other) => other > one + count);
  };
  expect(() => expectLinear(quadratic)).toThrow();
});
