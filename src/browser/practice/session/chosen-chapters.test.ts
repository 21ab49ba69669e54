/** Which chapters are practised, while the author renames and moves them. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { smallCourse } from '../testing/small-course.ts';
import { chosenChapters, rememberChapters } from './chosen-chapters.ts';
import type { PracticeCourse } from './practice-course.ts';

const kept = new Map<string, string>();
beforeEach(() => {
  kept.clear();
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, value: string) => kept.set(name, value),
  });
});
afterEach(() => vi.unstubAllGlobals());

const open = 'e4 e5 Nf3 Nc6 Bb5 a6 Ba4';
const closed = 'd4 d5 c4 e6 Nc3 Nf6 Bg5';
const english = 'c4 e5 Nc3 Nf6 g3 d5';

/** A course of chapters as `page title`, each with its line. */
function courseOf(...chapters: readonly (readonly [page: string, title: string, line: string])[]) {
  const course = smallCourse(chapters.map(([, , line]) => [line]));
  const named = chapters.map(([page, title]) => ({ page, title }));
  return { ...course, table: { ...course.table, chapters: named } };
}
const titles = (course: PracticeCourse) =>
  [...chosenChapters(course)].map((index) => course.table.chapters[index]?.title);

const first = courseOf(['open.html', 'Open', open], ['closed.html', 'Closed', closed]);

test('all, until a tick is taken away', () => {
  expect(titles(first)).toEqual(['Open', 'Closed']);
  rememberChapters(first, new Set([0]));
  expect(titles(first)).toEqual(['Open']);
});

test.each([
  ['in another order', courseOf(['closed.html', 'Closed', closed], ['open.html', 'Open', open])],
  ['with another title', courseOf(['open.html', 'Open', open], ['closed.html', 'Shut', closed])],
  ['in another file', courseOf(['open.html', 'Open', open], ['shut.html', 'Closed', closed])],
  [
    'in another file, with another title and a longer line',
    courseOf(['open.html', 'Open', open], ['shut.html', 'Shut', `${closed} Be7 e3`]),
  ],
  [
    'with the file of the other',
    courseOf(['closed.html', 'Open', open], ['open.html', 'Closed', closed]),
  ],
  [
    'beside a new chapter',
    courseOf(
      ['new.html', 'New', english],
      ['shut.html', 'Shut', closed],
      ['open.html', 'Open', open],
    ),
  ],
])('a chapter that is left out stays out %s', (_, later) => {
  rememberChapters(first, new Set([0]));
  expect(titles(later).filter((title) => title !== 'New')).toEqual(['Open']);
  expect(titles(later)).toHaveLength(later.table.chapters.length - 1);
});

test('one that is not in this edition is left out when it comes back', () => {
  rememberChapters(first, new Set([0]));
  const without = courseOf(['open.html', 'Open', open], ['english.html', 'English', english]);
  expect(titles(without)).toEqual(['Open', 'English']);
  rememberChapters(without, new Set([0]));
  expect(titles(first)).toEqual(['Open']);
});

test('what earlier editions of this page kept is read', () => {
  kept.set('practice:small:left-out', 'closed.html other.html');
  expect(titles(first)).toEqual(['Open']);
});

test.each(['[', '[1]', '[{"page":7}]', '{}'])(
  'of what cannot be read, %s, nothing is left out',
  (text) => {
    kept.set('practice:small:left-out', text);
    expect(titles(first)).toEqual(['Open', 'Closed']);
  },
);
