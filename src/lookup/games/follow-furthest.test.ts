import { expect, test } from 'vitest';
import { tableOf } from '../testing/table-of.ts';
import { compareGames } from './compare-games.ts';
import { followFurthest } from './follow-furthest.ts';

const game = (white: string, black: string, moves: string) =>
  `[White "${white}"]\n[Black "${black}"]\n\n${moves} *\n\n`;
const pgn = [
  game('Aldous', 'Whitlow', '1. d4 d5 2. c4 e6 3. Nc3 c5 4. e3'),
  game('Whitlow', 'Aldous', '1. d4 d5 2. c4 c6'),
  game('Aldous', 'Brandt', '1. e4 c5 2. Nf3'),
  game('Brandt', 'Aldous', '1. b3 e5'),
  game('Cole', 'Brandt', '1. d4 d5 2. c4 e6'),
].join('');

/** Both for Black, and the second may be made one for White. */
const tables = [
  tableOf('1. d4 d5 2. c4 e6 3. Nc3 c5 4. cxd5'),
  tableOf('1. d4 d5 2. c4 c6 ( 2... e6 3. Nf3 )'),
];
const compared = (sides: readonly ('white' | 'black' | 'both')[]) =>
  sides.map((side, index) => {
    const table = { ...(tables[index] ?? tableOf('1. e4')), side };
    const comparison = compareGames(table);
    const bytes = new TextEncoder().encode(pgn);
    return { table, games: [...comparison.push(bytes), ...comparison.end()] };
  });

test('a game is told with the courses that know most of its moves', () => {
  const followed = followFurthest(compared(['black', 'black']), '');
  expect(followed.map(({ courses }) => courses)).toEqual([[0], [1], [], [], [0, 1]]);
});

test('of a player only the games count, and of courses those for the side that was played', () => {
  const followed = followFurthest(compared(['black', 'white']), 'aldous');
  expect(followed.map(({ game }) => game.number)).toEqual([1, 2, 3, 4]);
  expect(followed.map(({ courses }) => courses)).toEqual([[1], [0], [], []]);
});
