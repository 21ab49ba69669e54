/** What a session takes in, in which order, and what the page tells between sessions. */
import { describe, expect, test } from 'vitest';
import type { How, Item } from '../store/item.ts';
import { smallCourse } from '../testing/small-course.ts';
import { forecastOf } from './forecast.ts';
import { weightsOf } from './importance.ts';
import { mostMissed, scoreOf, weeksOf } from './mistakes.ts';
import type { Progress } from './overview.ts';
import { planOf, tasksFor } from './plan.ts';

/** Much hangs on 1.e4 e5, less on 1...c5; the second chapter is another opening. */
const course = smallCourse([
  ['e4 e5 Nf3 Nc6 Bb5 a6 Ba4', 'e4 e5 Nf3 Nf6 Nxe5', 'e4 c5 Nf3 d6 d4'],
  ['d4~ d5 c4 e6 Nc3', 'd4~ d5 c4 c6 Nf3'],
]);
const today = 20_000;
const now = today * 86_400_000;

const sansOf = (tasks: readonly { readonly position: number }[]) =>
  tasks.map(({ position }) => course.itemAt.get(position)?.advice[0]);

/** Kept of the moves with these SANs; of several the first. */
function knowing(kept: Readonly<Record<string, Partial<Item>>>): Progress {
  const entries = Object.entries(kept).map(([san, more]): [string, Item] => {
    const item = course.items.find(({ advice }) => advice.includes(san));
    const key = item?.key ?? '';
    const base = { key, advice: san, last: today - 3, due: today, stability: 3, difficulty: 5 };
    return [key, { ...base, answers: 1, misses: 0, at: now, history: [], ...more }];
  });
  return new Map(entries);
}
const planned = (progress: Progress) => planOf(course, course.items, progress, { today, now });

test('how much hangs on a move is how many asked moves stand behind it', () => {
  const weights = weightsOf(course);
  const weight = (san: string) =>
    weights.get(course.items.find(({ advice }) => advice.includes(san))?.position ?? -1);
  expect(weight('e4')).toBe(7);
  expect(weight('Bb5')).toBe(2);
  expect(weight('Ba4')).toBe(1);
});

describe('a session', () => {
  test('begins with what most hangs on, and takes in eight new moves at most', () => {
    const { tasks, unmet, due } = planned(new Map());
    expect(sansOf(tasks).slice(0, 3)).toEqual(['e4', 'Nf3', 'c4']);
    expect(tasks).toHaveLength(8);
    expect(tasks.every(({ show }) => show === 'new')).toBe(true);
    expect([unmet, due]).toEqual([course.items.length, 0]);
  });

  test('goes on in the chapter that was practised last', () => {
    const { tasks } = planned(knowing({ c4: { due: today + 9 } }));
    const first = tasks.slice(0, 2).map(({ position }) => course.itemAt.get(position)?.chapters);
    expect(first).toEqual([[1], [1]]);
  });

  test('asks what comes back before what is new, and can be of that alone', () => {
    const plan = planned(knowing({ Bb5: {}, Ba4: { advice: 'Bxc6' }, e4: { due: today + 5 } }));
    expect(plan.due).toBe(2);
    expect(plan.changed).toBe(1);
    expect(sansOf(plan.back)).toEqual(['Bb5', 'Ba4']);
    expect(sansOf(plan.tasks).slice(0, 2)).toEqual(['Bb5', 'Ba4']);
    expect(sansOf(plan.ahead)).toEqual(['e4']);
  });

  test('of given moves asks all of them, and shows first what was never met', () => {
    const [first, second] = course.items;
    const given = [second, first].flatMap((item) => item ?? []);
    const tasks = tasksFor(given, knowing({ [first?.advice[0] ?? '']: { due: today + 5 } }));
    expect(tasks).toEqual([
      { position: second?.position, show: 'new' },
      { position: first?.position },
    ]);
  });
});

test('the forecast counts each move that was met, on its day or in its span', () => {
  const progress = knowing({
    e4: { due: today + 1 },
    Bb5: { due: today + 1 },
    c4: { due: today + 10 },
    d4: { due: today + 300 },
    Nc3: { due: today },
  });
  expect(forecastOf(course.items, progress, today)).toEqual([
    { from: today + 1, to: today + 1, count: 2 },
    { from: today + 7, to: today + 13, count: 1 },
    { from: today + 28, count: 1 },
  ]);
});

test('mistakes are counted by week, by span and by position', () => {
  const history = (...days: readonly (readonly [number, How])[]) => ({
    history: days.map(([ago, how]) => [today - ago, how] as const),
  });
  const progress = knowing({
    e4: { ...history([0, 'wrong'], [6, 'known'], [7, 'shown']), answers: 9, misses: 3 },
    Bb5: { ...history([20, 'wrong']), misses: 2, answers: 4 },
    c4: { ...history([40, 'slow']), misses: 1 },
  });
  expect(weeksOf(course.items, progress, today)).toEqual([
    { answers: 2, misses: 1 },
    { answers: 1, misses: 1 },
    { answers: 1, misses: 1 },
    { answers: 0, misses: 0 },
  ]);
  expect(scoreOf(course.items, progress, today - 55, today - 28)).toEqual({
    answers: 1,
    misses: 0,
  });
  expect(mostMissed(course.items, progress).map(({ kept }) => kept.advice)).toEqual(['e4', 'Bb5']);
});
