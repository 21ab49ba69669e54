import { expect, test } from 'vitest';
import { dueIn, readChapterProgress, writeForecast } from './forecast.ts';

test('what is due by a day is counted, whatever the order it was left in', () => {
  const text = writeForecast([20_003, 20_001, 20_001, 20_007]);
  expect([20_000, 20_001, 20_006, 20_007].map((day) => dueIn(text, day))).toEqual([0, 2, 3, 4]);
  for (const other of [null, '', '{', '{}', '[1,["a",2],[3]]', 'null']) {
    expect(dueIn(other, 20_001)).toBe(0);
  }
});

test('what stands of chapters is read; what is no such thing is left out', () => {
  const sound = { known: 2, all: 9, due: '[[20001,2]]' };
  expect([
    ...readChapterProgress(JSON.stringify({ one: sound, two: { known: '2' }, three: null })),
  ]).toEqual([['one', sound]]);
  for (const other of [null, '', '{', '[]', 'null', '7'])
    expect(readChapterProgress(other).size).toBe(0);
});
