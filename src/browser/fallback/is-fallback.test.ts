import { expect, test } from 'vitest';
import { isFallback } from './is-fallback.ts';

test.each([
  ['Practice', true],
  ['2 minutes', true],
  ['Chapter 1, הקו הראשי: about 1 minute.', true],
  ['“שני פרשים”, after 3...Nf6 in “שני פרשים”', true],
  ['מה רואה הרץ מ־c4.', false],
  ['מכין את d2-d4, ואז Nxd5 או O-O', false],
  ['“שני פרשים”', false],
  ['3... Nf6 +', undefined],
  ['O-O-O', undefined],
  ['…', undefined],
])('%s', (text, fallback) => {
  expect(isFallback(text)).toBe(fallback);
});
