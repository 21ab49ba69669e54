import { describe, expect, test } from 'vitest';
import { kindOfUciLetter } from '../../chess/uci.ts';
import type { BoardMove } from './board-state.ts';
import { findTyped } from './typed-move.ts';

const english = { king: 'K', queen: 'Q', rook: 'R', bishop: 'B', knight: 'N', pawn: '' };
const german = { king: 'K', queen: 'D', rook: 'T', bishop: 'L', knight: 'S', pawn: '' };

/** Moves written as `e8=Q:e7e8q`. */
function readLegal(text: string): BoardMove[] {
  return text.split(' ').map((entry) => {
    const [san = '', squares = ''] = entry.split(':');
    const promotion = kindOfUciLetter[squares.slice(4)];
    return { san, from: squares.slice(0, 2), to: squares.slice(2, 4), promotion };
  });
}

/** 1.e4 e5 2.Nf3 Nc6 3.Bc4 Nf6 with a white knight on b1: some of the legal moves, and more. */
const legal = readLegal(
  'O-O:e1g1 Nbd2:b1d2 Nfd2:f3d2 bxc3:b2c3 Bxc3:d2c3 e8=Q+:e7e8q e8=N:e7e8n exd8=Q:e7d8q Ke2:e1e2 d4:d2d4',
);

const names = (found: BoardMove[] | undefined) => found?.map(({ san }) => san);
const find = (typed: string, letters = english) => names(findTyped(typed, legal, letters));

describe('a typed move is found', () => {
  test.each([
    ['d4', ['d4']],
    ['Ke2', ['Ke2']],
    [' 3. Ke2+ ', ['Ke2']],
    ['12...Ke2!?', ['Ke2']],
    ['ke2', ['Ke2']],
    ['O-O', ['O-O']],
    ['0-0', ['O-O']],
    ['oo', ['O-O']],
    ['Nbd2', ['Nbd2']],
    ['N1d2', ['Nbd2']],
    ['Nf3-d2', ['Nfd2']],
    ['f3d2', ['Nfd2']],
    ['d2-d4', ['d4']],
    ['bxc3', ['bxc3']],
    ['bc3', ['bxc3']],
    ['Bc3', ['Bxc3']],
    ['e8=N', ['e8=N']],
    ['e8q', ['e8=Q+']],
    ['e8(Q)', ['e8=Q+']],
    ['exd8=Q', ['exd8=Q']],
  ])('%s', (typed, found) => {
    expect(find(typed)).toEqual(found);
  });

  test('in more than one way where it may be either', () => {
    expect(find('Nd2')).toEqual(['Nbd2', 'Nfd2']);
    expect(find('e8')).toEqual(['e8=Q+', 'e8=N']);
  });

  test('in the letters of the page, or in English ones', () => {
    const printed = readLegal('Sf3:g1f3 Lb5:f1b5 Td1:a1d1');
    expect(names(findTyped('Sf3', printed, german))).toEqual(['Sf3']);
    expect(names(findTyped('Nf3', printed, german))).toEqual(['Sf3']);
    expect(names(findTyped('Bb5', printed, german))).toEqual(['Lb5']);
  });
});

test('a move that is not legal is told from what is no move', () => {
  expect(find('Qh5')).toEqual([]);
  expect(find('O-O-O')).toEqual([]);
  expect(find('a1a1')).toEqual([]);
  expect(find('hello')).toBeUndefined();
  expect(find('Zf3')).toBeUndefined();
  expect(find('')).toBeUndefined();
});
