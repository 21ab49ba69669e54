import { expect, test } from 'vitest';
import { initialPosition } from '../../chess/initial.ts';
import { playSan } from '../../chess/rules.ts';
import type { PlayedMove, Position } from '../../chess/types.ts';
import type { PathMove } from '../../lookup/paths.ts';
import { tableOf } from '../../lookup/testing/table-of.ts';
import { answerMove, type MoveAnswer } from './answer-move.ts';

/** A course for Black. */
const table = tableOf(
  '1. d4 d5 2. c4 e6 (2... c6 {:option[solid]}) (2... Bf5? 3. cxd5 Bxb1 4. Qa4+) 3. Nc3 (3. a3 Nf6) (3. h3 Nf6) (3. Nf3 Nf6 4. Nc3 c5) c5',
);

function answer(...sans: readonly string[]): MoveAnswer {
  let before: Position = initialPosition;
  let last: PlayedMove | undefined;
  for (const san of sans) {
    before = last?.after ?? before;
    last = playSan(before, san);
    if (last === undefined) throw new Error(san);
  }
  if (last === undefined) throw new Error('no move');
  return answerMove(table, before, last);
}
const names = (steps: readonly PathMove[]) => steps.map(({ move }) => move.san);

test('advice, an option and a bad move are what the course calls them', () => {
  const advised = answer('d4', 'd5', 'c4', 'e6').course;
  expect(advised).toMatchObject({ kind: 'known', role: 'advice' });
  const option = answer('d4', 'd5', 'c4', 'c6').course;
  expect(option).toMatchObject({ kind: 'known', role: 'option' });
  if (option.kind === 'known') expect(names(option.advice)).toEqual(['e6']);
  const bad = answer('d4', 'd5', 'c4', 'Bf5').course;
  expect(bad).toMatchObject({ kind: 'known', role: 'bad' });
  if (bad.kind === 'known') expect(names(bad.goesOn)).toEqual(['cxd5', 'Bxb1', 'Qa4+']);
});

test('of a move that it does not have, the course tells its own', () => {
  const { course } = answer('d4', 'd5', 'c4', 'Nf6');
  expect(course.kind).toBe('not-mine');
  if (course.kind === 'not-mine') expect(names(course.plays)).toEqual(['e6']);
});

test('another order of moves meets the course', () => {
  const { course } = answer('c4', 'e6', 'd4', 'd5');
  expect(course.kind).toBe('meets');
});

test('a reply that it does not have is told beside those of the same piece or square', () => {
  // 3.a4, beside 3.a3 of the same pawn.
  const { course } = answer('d4', 'd5', 'c4', 'e6', 'a4');
  expect(course.kind).toBe('not-theirs');
  if (course.kind !== 'not-theirs') return;
  expect(names(course.treats)).toEqual(['Nc3', 'a3', 'h3', 'Nf3']);
  expect(course.related.map((each) => [names(each.replies), each.answer.move.san])).toEqual([
    [['a3'], 'Nf6'],
  ]);
});

test('where the course does not come, it has nothing to say', () => {
  expect(answer('f4', 'f5').course.kind).toBe('beyond');
});

test('the board tells mate, a mate that is let in, and what is left to be taken', () => {
  expect(answer('f3', 'e5', 'g4', 'Qh4#').board?.kind).toBe('mate');
  const letsIn = answer('f3', 'e5', 'g4').board;
  expect(letsIn).toMatchObject({ kind: 'mates', move: { san: 'Qh4#' } });
  const leaves = answer('e4', 'd5', 'Qg4').board;
  expect(leaves).toMatchObject({ kind: 'wins', capture: { san: 'Bxg4' }, lost: 9 });
  expect(answer('d4', 'd5', 'c4').board).toBeUndefined();
});
