import { expect, test } from 'vitest';
import { courseOf } from '../model/testing/course-of.ts';
import { positionsToLookAt } from './positions-to-look-at.ts';

const moves = (text: string, attributes = '') => `\`\`\`moves${attributes}\n${text}\n\`\`\`\n\n`;

/** The moves behind which there is something to judge; `start` where a block begins. */
function lookedAt(text: string, side: 'white' | 'black' | 'both' = 'white'): string[] {
  return positionsToLookAt(courseOf(text, side)).map(({ after }) => after || 'start');
}

test('before and after advice and replies, each position once', () => {
  const text = moves('1. e4 e5 2. Nf3') + moves('1. Nf3 {:option[or so]} e5 2. e4');
  expect(lookedAt(text)).toEqual(['start', '1.e4', '1...e5', '2.Nf3']);
});

test('what stands behind an option, a bad move or a mere mention is left out, but for its signs', () => {
  const text = moves(
    '1. e4 (1. d4 {:option[or so]} d5 2. c4 =) (1. f3? e5 2. g4 Qh4#) (1. c4 e5) 1... e5 ±',
  );
  expect(lookedAt(text)).toEqual(['start', '1.e4', '2.c4', '1...e5']);
});

test('a block that starts from such a position is left out too', () => {
  const text =
    moves('1. e4 (1. d4 {:option[or so] :here[other]}) 1... e5 2. Nf3') +
    moves('1... d5 2. c4', ' from="other"');
  expect(lookedAt(text)).toEqual(['start', '1.e4', '1...e5', '2.Nf3']);
});

test('exercises, and behind the moves that they name; not where the game has ended', () => {
  const text =
    '```exercise fen="6k1/5ppp/8/8/8/8/5PPP/RR4K1 w - - 0 1"\nask: x\nanswer: 1. Ra8#\nwrong:\n  - 1. h3 {no} h6\n```\n';
  expect(lookedAt(text)).toEqual(['start', '1.h3']);
});

test('a course for both sides advises nothing: its signs and exercises are left', () => {
  expect(lookedAt(moves('1. e4 e5 = 2. Nf3'), 'both')).toEqual(['1...e5']);
});
