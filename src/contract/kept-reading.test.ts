import { expect, test } from 'vitest';
import { readKeptReading } from './kept-reading.ts';

test('what was kept comes back, and what is something else is left out', () => {
  const kept = {
    last: { chapter: 'one', at: 'plans', title: 'Plans' },
    read: { one: ['start', 'plans'] },
  };
  expect(readKeptReading(JSON.stringify(kept))).toEqual(kept);
  expect(readKeptReading('{"last":{"chapter":"one"},"read":{"one":["a",1],"two":3}}')).toEqual({
    read: { one: ['a'] },
  });
  for (const text of [null, '', '{', '[]', 'null', '7', '"x"', '{"read":null}']) {
    expect(readKeptReading(text), String(text)).toEqual({ read: {} });
  }
});
