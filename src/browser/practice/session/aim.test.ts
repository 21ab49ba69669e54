import { afterEach, expect, test, vi } from 'vitest';
import { missedKey, writeMissed } from '../../../contract/practice-address.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { pageWords } from '../../../contract/words.ts';
import { stringsFor } from '../../../strings/index.ts';
import { smallCourse } from '../testing/small-course.ts';
import { subjectOf } from './aim.ts';

const course = smallCourse([['e4 e5 Nf3 Nc6 Bb5', 'e4 c5 Nf3'], ['d4~ d5 c4']]);
const words: PracticeWords = pageWords('practice', stringsFor('en'), false);
const advised = (subject: ReturnType<typeof subjectOf>) =>
  subject?.items.map(({ advice }) => advice[0]);
const at = (san: string) =>
  course.items.find(({ advice }) => advice.includes(san))?.key ?? 'nowhere';

afterEach(() => vi.unstubAllGlobals());

test('a chapter, by the name of its page', () => {
  const subject = subjectOf(course, { chapter: 'c1' }, words);
  expect(subject?.title).toBe('Chapter 1');
  expect(advised(subject)).toEqual(['c4']);
  expect([...(subject?.chapters ?? [])]).toEqual([1]);
});

test('a line: what is asked at its position and behind it', () => {
  const subject = subjectOf(course, { from: at('Nf3') }, words);
  expect(subject?.title).toBe('1.e4 e5');
  expect(advised(subject)).toEqual(['Nf3', 'Bb5']);
  expect(advised(subjectOf(course, { from: at('Nf3'), chapter: 'c1' }, words))).toEqual([]);
});

test('what games missed, in their order, and nothing that is not asked', () => {
  const left = writeMissed([at('c4'), 'nowhere', at('e4')]);
  vi.stubGlobal('sessionStorage', {
    getItem: (key: string) => (key === missedKey('small') ? left : null),
  });
  const subject = subjectOf(course, { missed: true }, words);
  expect(advised(subject)).toEqual(['c4', 'e4']);
  expect(subject?.exact).toBe(true);
});

test('no address, or one of what is not there, means the whole course', () => {
  expect(subjectOf(course, {}, words)).toBeUndefined();
  expect(subjectOf(course, { chapter: 'c7' }, words)).toBeUndefined();
  expect(subjectOf(course, { from: 'nowhere' }, words)).toBeUndefined();
});
