import { expect, test } from 'vitest';
import { begin, goOn, showMove, tryMove } from '../session/session.ts';
import { smallCourse } from '../testing/small-course.ts';
import { countOf, marksOf } from './marks.ts';

const course = smallCourse([['e4 e5 Nf3 Nc6 Bb5']]);
const tasks = course.items.map(({ position }) => ({ position }));
const start = begin(course, tasks, new Set([0]));

test('each move of a session has its sign, and the count says where one is', () => {
  expect(marksOf(start)).toEqual(['here', 'rest', 'rest']);
  expect(countOf(start)).toEqual({ n: 1, all: 3, again: false, comeBack: 0 });
  const second = tryMove(start, 'e4', false);
  expect(marksOf(second)).toEqual(['right', 'here', 'rest']);
  const missed = tryMove(second, 'a3', false);
  expect(marksOf(missed)).toEqual(['right', 'here', 'rest']);
  const third = tryMove(missed, 'Nf3', false);
  expect(marksOf(third)).toEqual(['right', 'wrong', 'here']);
  expect(countOf(third)).toEqual({ n: 3, all: 3, again: false, comeBack: 1 });
  const shown = showMove(third);
  expect(marksOf(shown)).toEqual(['right', 'wrong', 'wrong']);
  expect(countOf(shown)).toEqual({ n: 3, all: 3, again: false, comeBack: 2 });
  const again = goOn(shown);
  expect(countOf(again)).toEqual({ n: 2, all: 3, again: true, comeBack: 1 });
  expect(again.outcomes).toMatchObject([
    { how: 'known', turn: { number: 1, color: 'white' } },
    { how: 'wrong', turn: { number: 2, color: 'white' }, tried: 'a3' },
    { how: 'shown', turn: { number: 3, color: 'white' } },
  ]);
});

test('a new move comes back after it was shown', () => {
  const fresh = begin(
    course,
    tasks.map((task) => ({ ...task, show: 'new' as const })),
    new Set([0]),
  );
  const second = tryMove(fresh, 'e4', false);
  expect(marksOf(second)).toEqual(['due', 'here', 'rest']);
  expect(countOf(second)).toEqual({ n: 2, all: 3, again: false, comeBack: 1 });
});
