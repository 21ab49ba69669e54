import { expect, test } from 'vitest';
import { pathsOf } from './paths.ts';
import { tableOf } from './testing/table-of.ts';

const numbered = ({ number, color, move }: ReturnType<ReturnType<typeof pathsOf>['to']>[number]) =>
  `${number}${color === 'white' ? '.' : '...'}${move.san}`;

test('every position hangs on one move, and a path to it is played from the start', () => {
  const table = tableOf('1. d4 ( 1. c4 e6 2. d4 d5 3. Nc3 ) d5 2. c4 e6 ( 2... c6 )');
  const paths = pathsOf(table);
  expect(paths.roots).toEqual([0]);
  const met = table.positions.findIndex(({ key }) =>
    key.startsWith('rnbqkbnr/ppp2ppp/4p3/3p4/2PP4/8'),
  );
  expect(paths.to(met).map(numbered)).toEqual(['1.d4', '1...d5', '2.c4', '2...e6']);
  expect(paths.into(met)).toHaveLength(2);
  const [on] = table.positions[met]?.moves ?? [];
  expect(on && paths.to(on.to).map(numbered).join(' ')).toBe('1.d4 1...d5 2.c4 2...e6 3.Nc3');
});

test('a block that begins elsewhere is a root of its own, numbered as its FEN says', () => {
  const table = tableOf('1. d4', '8/8/4k3/8/8/4K3/4P3/8 b - - 0 41', '41... Kd5 42. Kd3');
  const paths = pathsOf(table);
  const [, root = -1] = paths.roots;
  expect(table.positions[root]?.key).toBe('8/8/4k3/8/8/4K3/4P3/8 b - -');
  expect(paths.to(table.positions.length - 1).map(numbered)).toEqual(['41...Kd5', '42.Kd3']);
  expect(paths.last(root)).toBe(undefined);
});
