import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareNames } from './natural-order.ts';

test('numbers go by their value, all else by its characters', () => {
  const names = [
    '10.md',
    '2.md',
    '1-b.md',
    '1-a.md',
    '02-x.md',
    'intro.md',
    '1.md',
    'part-9',
    'part-11',
  ];
  expect(names.sort(compareNames)).toEqual([
    '1-a.md',
    '1-b.md',
    '1.md',
    '02-x.md',
    '2.md',
    '10.md',
    'intro.md',
    'part-9',
    'part-11',
  ]);
});

test('is an order: of two different names one comes first, and so on along three', () => {
  const name = fc.stringMatching(/^[a-b0-2.-]{0,6}$/);
  fc.assert(
    fc.property(name, name, name, (a, b, c) => {
      expect(Math.sign(compareNames(a, b)) + Math.sign(compareNames(b, a))).toBe(0);
      expect(compareNames(a, b) === 0).toBe(a === b);
      if (compareNames(a, b) < 0 && compareNames(b, c) < 0) {
        expect(compareNames(a, c)).toBeLessThan(0);
      }
    }),
  );
});
