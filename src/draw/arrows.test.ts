import fc from 'fast-check';
import { expect, test } from 'vitest';
import { colors } from '../chess/types.ts';
import { arrowShapes, type BoardArrow } from './arrows.ts';

const square = fc
  .tuple(fc.integer({ min: 0, max: 7 }), fc.integer({ min: 1, max: 8 }))
  .map(([file, rank]) => `${'abcdefgh'.charAt(file)}${rank}`);
const arrow: fc.Arbitrary<BoardArrow> = fc
  .record({ meaning: fc.constantFrom('plan', 'threat', 'guard'), from: square, to: square })
  .filter(({ from, to }) => from !== to);

test('every arrow lies within the board and has a ground, a shaft and a head', () => {
  fc.assert(
    fc.property(arrow, fc.constantFrom(...colors), (one, view) => {
      const shapes = arrowShapes([one], view);
      expect(shapes.map(({ part }) => part)).toEqual([
        'arrow-ground',
        `${one.meaning}-shaft`,
        `${one.meaning}-head`,
      ]);
      for (const { d } of shapes) {
        for (const [number] of d.matchAll(/-?[\d.]+/g)) {
          expect(Number(number)).toBeGreaterThanOrEqual(0);
          expect(Number(number)).toBeLessThanOrEqual(80);
        }
      }
    }),
  );
});

test('arrows between the same squares stand side by side; one given twice is drawn once', () => {
  const out: BoardArrow = { meaning: 'plan', from: 'a1', to: 'a4' };
  const back: BoardArrow = { meaning: 'plan', from: 'a4', to: 'a1' };
  const threat: BoardArrow = { meaning: 'threat', from: 'a1', to: 'a4' };
  const columns = arrowShapes([out, back, threat], 'white')
    .filter(({ part }) => part.endsWith('shaft'))
    .map(({ d }) => Number(/^M([\d.]+)/.exec(d)?.[1]));
  expect(new Set(columns).size).toBe(3);
  expect(arrowShapes([out, out], 'white')).toEqual(arrowShapes([out], 'white'));
});
