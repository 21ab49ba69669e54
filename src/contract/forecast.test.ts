import { expect, test } from 'vitest';
import { dueIn, writeForecast } from './forecast.ts';

test('what is due by a day is counted, whatever the order it was left in', () => {
  const text = writeForecast([20_003, 20_001, 20_001, 20_007]);
  expect([20_000, 20_001, 20_006, 20_007].map((day) => dueIn(text, day))).toEqual([0, 2, 3, 4]);
  for (const other of [null, '', '{', '{}', '[1,["a",2],[3]]', 'null']) {
    expect(dueIn(other, 20_001)).toBe(0);
  }
});
