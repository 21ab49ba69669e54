import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ColourTable } from './colour-table.ts';

test('counts as a Map does, also beyond its first size', () => {
  const colour = fc.integer({ min: 0, max: 0xffffff });
  fc.assert(
    fc.property(fc.array(colour, { maxLength: 5000, size: 'max' }), (colours) => {
      const table = new ColourTable();
      const map = new Map<number, number>();
      for (const found of [...colours, ...colours.slice(0, 100)]) {
        table.add(found, 1);
        map.set(found, (map.get(found) ?? 0) + 1);
      }
      expect(new Map(table.entries())).toEqual(map);
      for (const found of colours.slice(0, 100)) expect(table.get(found)).toBe(map.get(found));
    }),
    { numRuns: 20 },
  );
});

test('black is a colour like others, and what was never added has no value', () => {
  const table = new ColourTable();
  expect(table.get(0)).toBe(0);
  table.add(0, 3);
  table.add(0, 4);
  expect(table.get(0)).toBe(7);
  expect(table.get(1)).toBe(0);
});
