import { expect, test } from 'vitest';
import {
  between,
  fileOf,
  isDark,
  isSquare,
  rankOf,
  relativeRank,
  squareAt,
  squares,
  step,
} from './squares.ts';

test('there are 64 squares, in the order of a FEN', () => {
  expect(new Set(squares).size).toBe(64);
  expect([squares[0], squares[7], squares[8], squares[63]]).toEqual(['a8', 'h8', 'a7', 'h1']);
  for (const square of squares) expect(squareAt(fileOf(square), rankOf(square))).toBe(square);
});

test('what is no square', () => {
  expect(['e4', 'a1', 'h8'].every(isSquare)).toBe(true);
  expect(['', 'e', 'e9', 'e0', 'i1', 'E4', 'e44', ' e4', 'toString'].some(isSquare)).toBe(false);
});

// FIDE Laws, 2.1: the corner square to the right of each player is white.
test('h1 and a8 are light, a1 and h8 dark', () => {
  expect(['h1', 'a8', 'a1', 'h8'].map(isDark)).toEqual([false, false, true, true]);
  expect(squares.filter(isDark)).toHaveLength(32);
});

test('steps end at the edge of the board', () => {
  expect(step('e4', 1, 2)).toBe('f6');
  expect(step('a1', -1, 0)).toBeUndefined();
  expect(step('h8', 0, 1)).toBeUndefined();
});

test('ranks from each side', () => {
  expect(relativeRank('e2', 'white')).toBe(2);
  expect(relativeRank('e7', 'black')).toBe(2);
});

test('squares between two', () => {
  expect(between('a1', 'd4')).toEqual(['b2', 'c3']);
  expect(between('h5', 'e5')).toEqual(['g5', 'f5']);
  expect(between('e7', 'e8')).toEqual([]);
  expect(between('e4', 'f6')).toBeUndefined();
  expect(between('e4', 'e4')).toBeUndefined();
});
