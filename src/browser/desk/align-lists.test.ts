import { expect, test } from 'vitest';
import { alignLists } from './align-lists.ts';

test.each([
  ['', '', []],
  ['abc', 'abc', [0, 1, 2]],
  ['abc', 'axbc', [0, undefined, 1, 2]],
  ['abcd', 'ad', [0, 3]],
  ['aaa', 'aa', [0, 1]],
  ['abcdef', 'xbdyf', [undefined, 1, 3, undefined, 5]],
  ['ab', 'ba', [1, undefined]],
] satisfies [string, string, (number | undefined)[]][])('%j and %j', (before, after, same) => {
  expect(alignLists([...before], [...after])).toEqual(same);
});

test('lists that differ by more than can be compared at once have nothing in common', () => {
  const before = Array.from({ length: 1000 }, (_, index) => `a${index}`);
  const after = before.toReversed();
  expect(alignLists(before, after)).toEqual(after.map(() => undefined));
});
