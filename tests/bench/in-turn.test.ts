/** What the bench makes of its runs. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { courseOf, editMove, middleChapter } from './courses.ts';
import { inTurn, ratio, typical } from './in-turn.ts';
import type { Cost } from './measure.ts';
import { sayFigure } from './report.ts';

const cost = (processor: number, megabytes = 0): Cost => ({
  ...{ processor, megabytes, whole: undefined, wall: 0, output: '' },
});

test('scenarios run in turn, round by round', () => {
  const ran: string[] = [];
  const run = (name: string) => () => {
    ran.push(name);
    return cost(ran.length);
  };
  const { base, subject } = inTurn(2, { base: run('base'), subject: run('subject') });
  expect(ran).toEqual(['base', 'subject', 'base', 'subject']);
  expect(base.map(({ processor }) => processor)).toEqual([1, 3]);
  expect(subject.map(({ processor }) => processor)).toEqual([2, 4]);
});

test('a ratio is the median of the rounds, whatever the machine did between them', () => {
  // Twice as slow in the second round, and one subject that was disturbed.
  const base = [cost(1, 10), cost(2, 10), cost(1, 10)];
  const subject = [cost(2, 30), cost(4, 20), cost(5, 10)];
  expect(ratio(subject, base)).toEqual({ value: 2, spread: { least: 2, most: 5, pairs: 3 } });
  expect(ratio(subject, base, ({ megabytes }) => megabytes).value).toBe(2);
  expect(() => ratio(subject, base.slice(1))).toThrow('a round lacks a run');
});

test('of several runs the one in the middle is shown', () => {
  expect(typical([cost(5), cost(1), cost(3)]).processor).toBe(3);
  expect(() => typical([])).toThrow('nothing was measured');
});

test('a figure says its spread and its goal', () => {
  const spread = { least: 2.1, most: 12.41, pairs: 3 };
  expect(sayFigure({ value: 2.24, unit: '×', spread, goal: 1.6 })).toBe(
    '2.24 × (2.10 to 12.4 in 3 pairs; goal 1.6, MISSED)',
  );
  expect(sayFigure({ value: 120, unit: 's' })).toBe('120 s');
});

test('an edit of a move leaves a legal line with another end', async () => {
  const work = mkdtempSync(path.join(tmpdir(), 'linewright-bench-test-'));
  try {
    const course = await courseOf(2, work);
    const read = () => readFileSync(path.join(course.folder, 'chapters', middleChapter(2)), 'utf8');
    const before = read();
    editMove(course, 2);
    const after = read();
    expect(after).not.toBe(before);
    const cut = (text: string) => text.replace(/\S+\n```\n/, '');
    expect(cut(after)).toBe(cut(before));
    // It finds the move that it wrote, so that is one of the legal ones.
    editMove(course, 2);
    expect(read()).not.toBe(after);
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
});
