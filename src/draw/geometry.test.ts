import { expect, test } from 'vitest';
import { colors } from '../chess/types.ts';
import { boardBox, squareAt, squareCentre, squareCorner } from './geometry.ts';

const squares = Array.from(
  { length: 64 },
  (_, index) => `${'abcdefgh'.charAt(index % 8)}${1 + Math.floor(index / 8)}`,
);

test.each(colors)('seen by %s, a point in a square is that square', (view) => {
  for (const square of squares) expect(squareAt(squareCentre(square, view), view)).toBe(square);
});

test('a1 is at the bottom left of White, top right of Black', () => {
  expect(squareCorner('a1', 'white')).toEqual({ x: 0, y: 70 });
  expect(squareCorner('a1', 'black')).toEqual({ x: 70, y: 0 });
});

test('outside the squares there is none', () => {
  for (const point of [
    { x: -0.1, y: 5 },
    { x: 80, y: 5 },
    { x: 5, y: 80 },
  ]) {
    expect(squareAt(point, 'white')).toBeUndefined();
  }
});

test('the picture is square, with and without coordinates', () => {
  expect(boardBox(true)).toEqual({ x: -6, y: -1.5, width: 87.5, height: 87.5 });
  expect(boardBox(false)).toEqual({ x: -1.5, y: -1.5, width: 83, height: 83 });
});
