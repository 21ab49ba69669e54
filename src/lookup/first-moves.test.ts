import { expect, test } from 'vitest';
import { englishLetters } from '../chess/letters.ts';
import { firstMoves } from './first-moves.ts';
import { tableOf } from './testing/table-of.ts';

const after = (moves: string) => firstMoves(tableOf(moves), englishLetters);

test('an example begins as the course does, with a move that it does not call bad', () => {
  expect(after('1. e4 e5 2. Nf3 Nc6 3. Bc4')).toBe('1.e4 e5 2.Nf3 Nc6');
  expect(after('1. e4 e5? ( 1... c5 2. Nf3 ) 2. Nf3')).toBe('1.e4 c5 2.Nf3');
});

test('there is none where no line begins a game', () => {
  const table = tableOf('1. e4');
  expect(firstMoves({ ...table, positions: table.positions.slice(1) }, englishLetters)).toBe('');
});
