import { expect, test } from 'vitest';
import type { PlayedMove } from '../../../chess/types.ts';
import { isNothing, movesToWrite, nothingSaid, toggled, waysFor, withGlyph } from './said.ts';
import { sameAt } from './same-choice.ts';

test('the ways offered are those that make sense for the side and the place', () => {
  const at = (side: 'white' | 'black' | 'both', next: string[]) => waysFor({ side, next }, 'black');
  expect(at('black', [])).toEqual(['next', 'alternative', 'bad']);
  expect(at('white', [])).toEqual(['next', 'bad']);
  expect(at('black', ['c5'])).toEqual(['alternative', 'bad', 'variation']);
  expect(at('white', ['c5'])).toEqual(['reply', 'bad']);
  expect(at('both', ['c5'])).toEqual(['variation', 'bad']);
});

test('a move has one suffix and one verdict', () => {
  expect(withGlyph([], 1)).toEqual([1]);
  expect(withGlyph([1, 16], 6)).toEqual([16, 6]);
  expect(withGlyph([6, 16], 10)).toEqual([6, 10]);
  expect(withGlyph([6, 10], 6)).toEqual([10]);
  expect(toggled([{ a: 1 }], { a: 1 })).toEqual([]);
});

test('a line is sent with what was said of each move, and the first says what it is', () => {
  const moves = ['h6', 'Bh4'].map((san) => ({ san }) as PlayedMove);
  const said = [nothingSaid, { ...nothingSaid, comment: 'So.', title: 'No name', glyphs: [10] }];
  const of = (index: number) => said[index] ?? nothingSaid;
  const second = { san: 'Bh4', glyphs: [10], comment: 'So.' };
  expect(movesToWrite(moves, of, 'alternative')).toEqual([{ san: 'h6', option: true }, second]);
  expect(movesToWrite(moves, of, 'bad')).toEqual([{ san: 'h6', glyphs: [2] }, second]);
  expect(movesToWrite(moves, () => ({ ...nothingSaid, glyphs: [4] }), 'bad')[0]).toEqual({
    san: 'h6',
    glyphs: [4],
  });
  expect(isNothing({ ...nothingSaid, comment: ' ', title: 'x' })).toBe(true);
});

test('the first named position that a line meets is told unless it is declined', () => {
  const meeting = (after: number, name: string) => ({ after, name, file: 'a.md', line: 1 });
  const look = { meetings: [meeting(2, 'first'), meeting(3, 'second')] };
  const names = [1, 2, 3].map((after) => sameAt(look, after, nothingSaid));
  expect(names).toEqual([undefined, 'first', undefined]);
  expect(sameAt(look, 2, { ...nothingSaid, same: false })).toBeUndefined();
  expect(sameAt(look, 3, { ...nothingSaid, same: true })).toBe('second');
  const moves = ['h6', 'Bh4'].map((san) => ({ san }) as PlayedMove);
  const sameOf = (index: number) => (index === 1 ? 'first' : undefined);
  expect(movesToWrite(moves, () => nothingSaid, 'next', sameOf)).toEqual([
    { san: 'h6' },
    { san: 'Bh4', same: 'first' },
  ]);
});
