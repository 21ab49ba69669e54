import { expect, test } from 'vitest';
import { findPlayer } from './find-player.ts';
import type { ComparedGame } from './types.ts';

const between = (...pairs: readonly (readonly [string, string])[]) =>
  pairs.map(([white, black]) => ({ white, black }) as ComparedGame);

test('who stands in more than half of several games is found', () => {
  const games = between(['Quill', 'Marsh'], ['Oddy', 'Quill'], ['Marsh', 'Oddy']);
  expect(findPlayer(games)).toBeUndefined();
  expect(findPlayer([...games, ...between(['Quill', 'Ferrow'])])).toEqual({
    name: 'Quill',
    games: 3,
  });
});

test('nobody is found in one game, between two who always meet, or where no names are known', () => {
  expect(findPlayer(between(['Quill', 'Marsh']))).toBeUndefined();
  expect(findPlayer(between(['Quill', 'Marsh'], ['Marsh', 'Quill']))).toBeUndefined();
  expect(findPlayer(between(['?', '?'], ['?', 'Quill'], ['?', '']))).toBeUndefined();
});
