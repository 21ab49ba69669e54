import { describe, expect, test } from 'vitest';
import { askedFor, beginWalk, type LineMove, movesToFind, takeStep } from './walk-answer.ts';

/** `a(b c) d`: moves by one letter, variations in brackets behind the move they stand beside; `x?` is bad. */
const move = (id: string, ...children: LineMove[]): LineMove => ({ id, children });
const bad = (id: string): LineMove => ({ id, bad: true, children: [] });

const lines = {
  answer: [
    move(
      'a',
      move('r', move('b', move('s', move('c'))), move('v'), bad('m')),
      move('t', move('z')),
    ),
    move('a', move('r', move('w'))),
  ],
  also: [move('g', move('r', move('h')))],
  wrong: [move('f', move('q'))],
};

const right = (ids: readonly string[]) => {
  let walk = beginWalk(lines);
  for (const id of ids) {
    const step = takeStep(walk, id, lines);
    if (step.kind !== 'right' || !step.walk) throw new Error(`${id} ends the walk`);
    walk = step.walk;
  }
  return walk;
};

describe('a walk along the answer', () => {
  test('the reader finds the moves of his side, the main reply is played', () => {
    const step = takeStep(beginWalk(lines), 'a', lines);
    expect(step).toMatchObject({ kind: 'right', also: false, reply: { id: 'r' } });
    const next = takeStep(right(['a']), 'b', lines);
    expect(next).toMatchObject({ kind: 'right', reply: { id: 's' } });
    expect(right(['a', 'b']).made.map(({ id }) => id)).toEqual(['a', 'r', 'b', 's']);
    expect(takeStep(right(['a', 'b']), 'c', lines)).toMatchObject({
      kind: 'right',
      reply: undefined,
      walk: undefined,
    });
  });
  test('several moves are right: variations of his side, and lines that begin alike', () => {
    expect(askedFor(right(['a']), lines).map(({ id }) => id)).toEqual(['b', 'v', 'w']);
    for (const id of ['v', 'w']) {
      expect(takeStep(right(['a']), id, lines)).toMatchObject({ kind: 'right', walk: undefined });
    }
  });
  test('a move that is good too is taken, and the line goes on along it', () => {
    const step = takeStep(beginWalk(lines), 'g', lines);
    expect(step).toMatchObject({ kind: 'right', also: true, walk: { also: true } });
    expect(takeStep(right(['g']), 'h', lines)).toMatchObject({ kind: 'right', also: true });
    expect(takeStep(right(['g']), 'b', lines)).toEqual({ kind: 'unknown' });
  });
  test('moves to avoid: those of the author at first, those with a bad sign later', () => {
    expect(takeStep(beginWalk(lines), 'f', lines)).toMatchObject({ kind: 'wrong' });
    expect(takeStep(right(['a']), 'm', lines)).toMatchObject({ kind: 'wrong', move: { id: 'm' } });
    expect(takeStep(right(['a']), 'f', lines)).toEqual({ kind: 'unknown' });
  });
  test('counts what is left to find along the main line', () => {
    expect(movesToFind(beginWalk(lines), lines)).toBe(3);
    expect(movesToFind(right(['a', 'b']), lines)).toBe(1);
  });
  test('a line that shows a mistake of the reader’s side ends before it', () => {
    const shown = { answer: [move('a', move('r', bad('m')))], also: [], wrong: [] };
    expect(takeStep(beginWalk(shown), 'a', shown)).toMatchObject({
      walk: undefined,
      reply: { id: 'r' },
    });
  });
});
