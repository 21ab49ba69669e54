import { describe, expect, test } from 'vitest';
import { answered } from '../session/schedule.ts';
import { smallCourse } from '../testing/small-course.ts';
import { makeProgressFile, readProgressFile } from './progress-file.ts';

const course = smallCourse([['e4 e5 Nf3 Nc6 Bb5']]);
const now = Date.UTC(2026, 2, 10);
const items = course.items.map((item) => answered(undefined, item, 'known', now));
const text = makeProgressFile(course.table, items, now);

const head = { course: 'small', title: 'Small', exercises: {} };

test('what was saved is read again', () => {
  expect(readProgressFile(text, now)).toEqual({ ...head, items, notes: [], mended: new Set() });
  expect(readProgressFile(`\uFEFF${text}`, now)).toEqual({
    ...head,
    items,
    notes: [],
    mended: new Set(),
  });
});

test('notes go along, and those that are none are left out', () => {
  const note = {
    key: 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq -',
    text: 'Mine.',
    changed: now,
    label: 'at the start',
    href: 'a.html#at-x',
  };
  const saved = makeProgressFile(course.table, items, now, [note]);
  expect(readProgressFile(saved, now)).toEqual({
    ...head,
    items,
    notes: [note],
    mended: new Set(),
  });
  const spoilt = saved.replace('"changed"', '"when"');
  expect(readProgressFile(spoilt, now)).toEqual({ ...head, items, notes: [], mended: new Set() });
});

test('results of exercises go along', () => {
  const exercises = { 'k w - -': { grade: 'once', day: '2026-03-09' } } as const;
  const saved = makeProgressFile(course.table, items, now, [], exercises);
  expect(readProgressFile(saved, now)).toMatchObject({ items, exercises });
  const spoilt = saved.replace('"once"', '"won"');
  expect(readProgressFile(spoilt, now)).toMatchObject({ items, exercises: {} });
});

describe('nothing is taken from a file', () => {
  test('that is cut short, wherever', () => {
    const head = text.indexOf('"version"');
    for (let end = head; end < text.length - 3; end += 7) {
      expect(readProgressFile(text.slice(0, end), now)).toEqual({ fault: 'cut-short' });
    }
  });

  test('that has lost items', () => {
    const data = JSON.parse(text) as { items: unknown[] };
    const less = JSON.stringify({ ...data, items: data.items.slice(1) });
    expect(readProgressFile(less, now)).toEqual({ fault: 'cut-short' });
  });

  test.each([
    ['nothing', ''],
    ['other text', '1. e4 e5'],
    ['other JSON', '{"items":[]}'],
    ['null', 'null'],
    ['a bad value', text.replace(/"stability": [\d.]+/, '"stability": "much"')],
    ['markup for a key', text.replace(/"key": "[^"]+"/, '"key": "<img src=x>"')],
    ['an unknown answer', text.replaceAll('"known"', '"guessed"')],
  ])('that holds %s', (_, bad) => {
    expect(readProgressFile(bad, now)).toEqual({ fault: 'not-progress' });
  });

  test('of a later edition of the page', () => {
    const later = text.replace('"version": 1', '"version": 2');
    expect(readProgressFile(later, now)).toEqual({ fault: 'newer' });
    const other = later.replace('"items"', '"positions"');
    expect(readProgressFile(other, now)).toEqual({ fault: 'newer' });
  });
});
