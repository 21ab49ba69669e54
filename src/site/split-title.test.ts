import { expect, test } from 'vitest';
import { splitTitle } from './split-title.ts';

test.each([
  [
    'The Tarrasch Defence: a Black answer to 1.d4',
    'The Tarrasch Defence',
    'a Black answer to 1.d4',
  ],
  ['One: two: three', 'One', 'two: three'],
  ['A course at 10:30', 'A course at 10:30', undefined],
  ['Only this:', 'Only this:', undefined],
  ['Plain', 'Plain', undefined],
])('%s', (title, shortTitle, subtitle) => {
  expect(splitTitle(title)).toEqual({ shortTitle, ...(subtitle !== undefined && { subtitle }) });
});
