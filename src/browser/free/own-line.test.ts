import { expect, test } from 'vitest';
import { initialPosition } from '../../chess/initial.ts';
import { playSan } from '../../chess/rules.ts';
import { goTo, lastMoveIn, type OwnLine, ownLineFrom, playIn, positionIn } from './own-line.ts';

function played(line: OwnLine, ...sans: readonly string[]): OwnLine {
  return sans.reduce((before, san) => {
    const move = playSan(positionIn(before), san);
    if (move === undefined) throw new Error(san);
    return playIn(before, move);
  }, line);
}
const sans = ({ moves }: OwnLine) => moves.map(({ san }) => san);
const start = ownLineFrom(initialPosition);

test('moves are taken back and played again, and another one drops what came after', () => {
  const line = played(start, 'e4', 'e5', 'Nf3');
  const back = goTo(line, 1);
  expect(lastMoveIn(back)?.san).toBe('e4');
  expect(sans(back)).toEqual(['e4', 'e5', 'Nf3']);
  const again = played(back, 'e5');
  expect([sans(again), again.at]).toEqual([['e4', 'e5', 'Nf3'], 2]);
  const other = played(back, 'c5');
  expect([sans(other), other.at]).toEqual([['e4', 'c5'], 2]);
});

test('nobody goes beyond its ends', () => {
  const line = played(start, 'e4');
  expect(positionIn(goTo(line, -1))).toBe(initialPosition);
  expect(goTo(line, 9).at).toBe(1);
  expect(lastMoveIn(start)).toBeUndefined();
});
