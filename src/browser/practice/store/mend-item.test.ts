/** Files with dates that no clock gave: never an error, and never a move that is not asked again. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../session/day.ts';
import { dueDay, isDue } from '../session/item-state.ts';
import { answered } from '../session/schedule.ts';
import { smallCourse } from '../testing/small-course.ts';
import { hows, type Item } from './item.ts';
import { makeProgressFile, readProgressFile } from './progress-file.ts';

const course = smallCourse([['e4 e5 Nf3 Nc6 Bb5 a6 Ba4']]);
const msOfDay = 86_400_000;
const now = new Date(2026, 2, 10, 18).getTime();
const today = dayOf(now);
const learnt = course.items.map((item) => {
  const first = answered(undefined, item, 'known', now - 30 * msOfDay);
  return answered(first, item, 'known', now - 20 * msOfDay);
});
const [sound] = learnt;
if (sound === undefined) throw new Error('a course has items');
const file = (items: readonly Item[]) => makeProgressFile(course.table, items, now);

/** The only item of a file in which some of its values are others. */
function read(change: object) {
  const result = readProgressFile(file([{ ...sound, ...change } as Item]), now);
  if ('fault' in result) throw new Error(result.fault);
  const [item] = result.items;
  if (item === undefined) throw new Error('the file has an item');
  return { item, mended: result.mended.size };
}

const memory = ({ stability, difficulty, answers, misses }: Item) => ({
  stability,
  difficulty,
  answers,
  misses,
});

describe('what no clock gave is mended', () => {
  test('nothing of a sound file is changed', () => {
    const result = readProgressFile(file(learnt), now);
    expect(result).toMatchObject({ items: learnt, mended: new Set() });
  });

  test.each([
    ['in the year 275760', 100_000_000],
    ['after the end of time', 1e15],
    ['before 1970', -1],
    ['that is no number, which JSON writes as null', Number.NaN],
    ['in the middle of a day', today - 0.5],
    ['after the file was saved', today + 400],
  ])('a last answer %s is asked now, with the memory it had', (_, last) => {
    const { item, mended } = read({ last });
    expect(mended).toBe(1);
    expect(memory(item)).toEqual(memory(sound));
    expect(isDue(item, [item.advice], today)).toBe(true);
    // Known today, it counts, and is not asked again today.
    const next = answered(item, { key: item.key, advice: [item.advice] }, 'known', now);
    expect(isDue(next, [item.advice], today)).toBe(false);
    expect(next.stability).toBeGreaterThan(item.stability);
  });

  test.each([
    ['before the last answer', sound.last - 5, sound.last + 1],
    ['on its day', sound.last, sound.last + 1],
    ['in more than a year', sound.last + 4000, sound.last + 365],
    ['in the year 275760', 100_000_000, sound.last + 365],
    ['never', Number.NaN, sound.last + 1],
  ])('an item that is due %s', (_, due, right) => {
    expect(read({ due })).toEqual({ item: { ...sound, due: right }, mended: 1 });
  });

  test('a time that is none is taken from the day', () => {
    for (const at of [-1, Number.NaN, 8.64e15 + 1, now + 400 * msOfDay]) {
      const { item, mended } = read({ at });
      expect(mended).toBe(1);
      expect(Math.abs(dayOf(item.at) - sound.last)).toBeLessThanOrEqual(1);
    }
  });

  test('a memory that FSRS refuses', () => {
    expect(read({ stability: 1e-9 }).item.stability).toBe(0.001);
    expect(read({ stability: 1e300 }).item.stability).toBe(36_500);
    expect(read({ stability: Number.NaN }).item.stability).toBe(sound.due - sound.last);
    expect(read({ difficulty: 0 }).item.difficulty).toBe(1);
    expect(read({ answers: -3, misses: 7 }).item).toMatchObject({ answers: 2, misses: 2 });
  });

  test('a history keeps what can be', () => {
    const history = [...sound.history, [1e9, 'wrong'], [Number.NaN, 'known']];
    expect(read({ history })).toEqual({ item: sound, mended: 1 });
    const long = Array.from({ length: 5000 }, () => [today - 1, 'known']);
    expect(read({ history: long }).item.history).toHaveLength(10);
  });
});

test('a clock here that is behind rewrites nothing: the file was saved later', () => {
  const late = readProgressFile(file(learnt), now - 900 * msOfDay);
  expect(late).toMatchObject({ items: learnt, mended: new Set() });
});

/** Values that a broken program or hand may leave, and that JSON can hold. */
const anyValue = fc.oneof(
  fc.constantFrom<unknown>(null, -1, 0, 0.5, 1e8, 1e8 + 1, 1e15, 8.64e15, 1e300, 5e-324, -1e300),
  fc.constantFrom<unknown>(true, '', 'much', '2026-03-10', [], {}, [null], [[1, 'known']]),
  fc.double(),
  fc.integer(),
  fc.integer({ min: today - 800, max: today + 800 }),
);
const fields = ['last', 'due', 'at', 'stability', 'difficulty', 'answers', 'misses', 'history'];
const change = fc.record({
  item: fc.nat({ max: learnt.length - 1 }),
  field: fc.constantFrom(...fields),
  value: anyValue,
});
const head = fc.constantFrom<object>(
  {},
  { saved: '+275760-09-13T00:00:00.000Z' },
  { saved: 'yesterday' },
  { saved: null },
  { count: 1 },
  { version: 0 },
);

function expectSchedulable(item: Item): void {
  const asked = { key: item.key, advice: [item.advice] };
  const day = dueDay(item, today);
  expect(day).toBeLessThanOrEqual(today + 366);
  expect(isDue(item, asked.advice, Math.max(day, today))).toBe(true);
  for (const how of hows) {
    const next = answered(item, asked, how, now + msOfDay * 2);
    expect(next.due).toBeGreaterThan(next.last);
    expect(next.due).toBeLessThanOrEqual(next.last + 365);
    expect(Number.isFinite(next.stability) && Number.isFinite(next.at)).toBe(true);
  }
}

test('of a mutated file all is refused, or all can be asked and answered', () => {
  fc.assert(
    fc.property(fc.array(change, { maxLength: 4 }), head, (changes, more) => {
      const items = learnt.map((item) => ({ ...item }));
      for (const { item, field, value } of changes)
        Object.assign(items[item] ?? {}, { [field]: value });
      const data = { ...JSON.parse(file(items as Item[])), ...more };
      const result = readProgressFile(JSON.stringify(data), now);
      if ('items' in result) for (const item of result.items) expectSchedulable(item);
    }),
    { numRuns: 1500 },
  );
});

test('a file with any piece of its text replaced is never an error', () => {
  const text = file(learnt);
  const piece = fc.constantFrom(
    '',
    '1e999',
    '-',
    '9',
    '"',
    '}',
    ',',
    'null',
    '\u0000',
    '.',
    '-1e9',
  );
  fc.assert(
    fc.property(fc.nat({ max: text.length }), fc.nat({ max: 12 }), piece, (at, cut, put) => {
      const result = readProgressFile(text.slice(0, at) + put + text.slice(at + cut), now);
      if ('items' in result) for (const item of result.items) expectSchedulable(item);
    }),
    { numRuns: 1500 },
  );
});
