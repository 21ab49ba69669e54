/** What is taken over from other courses of a site, so that nothing known is asked as new. */
import { expect, test } from 'vitest';
import { answered } from '../session/schedule.ts';
import { smallCourse } from '../testing/small-course.ts';
import type { Item } from './item.ts';
import { knownHere, missingHere } from './known-elsewhere.ts';

const msOfDay = 86_400_000;
const now = new Date(2026, 2, 10, 18).getTime();
const course = smallCourse([['e4 e5 Nf3 Nc6 Bb5']]);
const learnt = (of: typeof course, at = now) =>
  of.items.map((item) => answered(undefined, item, 'known', at));
const sans = (items: readonly Item[]) => items.map(({ advice }) => advice);

test('the same course under another name: all of it', () => {
  expect(knownHere(learnt(course), course)).toEqual(learnt(course));
});

test('another course: what both advise in the same position, by whatever order of moves', () => {
  const other = smallCourse([['Nf3 Nc6 e4 e5 Bc4', 'd4 d5 c4']]);
  expect(sans(knownHere(learnt(other), course))).toEqual([]);
  const meeting = smallCourse([['Nf3 Nc6 e4 e5 Bb5']]);
  expect(sans(knownHere(learnt(meeting), course))).toEqual(['Bb5']);
});

test('other advice in the same position is not known', () => {
  const other = smallCourse([['e4 e5 Nc3']]);
  expect(sans(knownHere(learnt(other), course))).toEqual(['e4']);
});

test('nothing from a course for the other side, whatever positions they share', () => {
  const replies = course.table.positions.flatMap(({ key, moves }) =>
    moves
      .filter(({ kind }) => kind === 'reply')
      .map(({ san }) => answered(undefined, { key, advice: [san] }, 'known', now)),
  );
  expect(replies).toHaveLength(2);
  expect(knownHere(replies, course)).toEqual([]);
});

test('only what is missing here, and of two records the later', () => {
  const [first, second, third] = learnt(course);
  if (!first || !second || !third) throw new Error('three moves');
  const older = learnt(course, now - 30 * msOfDay);
  const known = new Map([[first.key, first]]);
  const missing = missingHere([...older, second, third], course, { known, since: -1, now });
  expect(missing).toEqual([second, third]);
});

test('what was learnt before all was forgotten stays forgotten, whatever date it has', () => {
  const since = now - 10 * msOfDay;
  const older = learnt(course, since - msOfDay);
  const ahead = older.map((item) => ({ ...item, at: now + 900 * msOfDay }));
  expect(missingHere(older, course, { known: new Map(), since, now })).toEqual([]);
  expect(missingHere(ahead, course, { known: new Map(), since, now })).toEqual([]);
  expect(missingHere(learnt(course), course, { known: new Map(), since, now })).toHaveLength(3);
});
