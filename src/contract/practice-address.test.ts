import { expect, test } from 'vitest';
import { positionAddress } from './position-address.ts';
import {
  chapterSession,
  lineSession,
  missedSession,
  readMissed,
  readPracticeAim,
  writeMissed,
} from './practice-address.ts';

const key = 'rnbqkbnr/pp1ppppp/8/2p5/4P3/5N2/PPPP1PPP/RNBQKB1R b KQkq -';
const aimOf = (address: string) => readPracticeAim(new URL(address, 'https://club.example').hash);

test('the address of a session is read as it was meant', () => {
  expect(aimOf(chapterSession('01-d4 & c4'))).toEqual({ chapter: '01-d4 & c4' });
  expect(aimOf(lineSession(positionAddress(key)))).toEqual({ from: key });
  expect(aimOf(lineSession(`${positionAddress(key)}.rossolimo`))).toEqual({ from: key });
  expect(aimOf(missedSession)).toEqual({ missed: true });
});

test('what is no aim is left out', () => {
  expect(aimOf('practice.html')).toEqual({});
  expect(aimOf('practice.html#from=nowhere')).toEqual({});
  expect(aimOf('practice.html#page-text')).toEqual({});
});

test('positions left for practice come back in their order, each once', () => {
  expect(readMissed(writeMissed([key, 'b', key]))).toEqual([key, 'b']);
  for (const text of [null, '', '{', '{"a":1}', '[1,2]']) expect(readMissed(text)).toEqual([]);
});
