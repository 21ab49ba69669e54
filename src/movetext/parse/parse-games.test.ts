import { describe, expect, test } from 'vitest';
import { outline, outlineProblems } from '../testing/outline.ts';
import { parseGames } from './parse-games.ts';

function read(text: string): unknown[] {
  return parseGames(text).map(({ tags, line, problems }) => [
    ...tags.map(({ name, value }) => `${name}=${value}`),
    outline(line),
    ...outlineProblems(text, problems),
  ]);
}

describe('parseGames', () => {
  test.each(['', '\uFEFF \r\n', '% nothing\n'])('%j has no game', (text) => {
    expect(parseGames(text)).toEqual([]);
  });

  test('games begin at their tags; places are those of the whole text', () => {
    const text = '[Event "a"]\n\n1. e4 *\n\n[Event "b"]\n\n1. d4 d5 1-0\n';
    expect(read(text)).toEqual([
      ['Event=a', '<1,1>e4 *'],
      ['Event=b', '<1,1>d4 d5 1-0'],
    ]);
    const move = parseGames(text)[1]?.line.moves[1]?.san;
    expect(move?.span.start).toBe(text.indexOf('d5'));
  });

  test('a game may lack its result, its moves or its tags', () => {
    expect(read('[A "1"]\n\ne4\n[A "2"]\n\n[A "3"]\n\nd4 *\n1. c4 *\n1.f4 0-1')).toEqual([
      ['A=1', 'e4'],
      ['A=2', ''],
      ['A=3', 'd4 *'],
      ['<1,1>c4 *'],
      ['<1,1>f4 0-1'],
    ]);
  });

  test('lines may end with CR alone or CR LF', () => {
    expect(read('[A "1"]\r\re4 *\r\r[A "2"]\r\n\r\nd4 *\r\n')).toEqual([
      ['A=1', 'e4 *'],
      ['A=2', 'd4 *'],
    ]);
  });

  test('a comment after the result is that of the finished game, after a blank line of the next', () => {
    expect(read('1. e4 1-0 {a}\n{b}\n\n{c}\n[A "2"]\n\n1. d4 *')).toEqual([
      ['<1,1>e4{a}{b} 1-0'],
      ['A=2', '{c} <1,1>d4 *'],
    ]);
  });

  test.each([
    ['a variation left open', '1. e4 (1. d4', ['<1,1>e4(<1,1>d4)', 'variation-unclosed (']],
    ['a comment left open', '1. e4 {never', ['<1,1>e4{never}', 'comment-unclosed {']],
    ['words', '1. e4 what now', ['<1,1>e4', 'text-unreadable what now']],
    ['moves after the result', '1. e4 * e5 (', ['<1,1>e4 *', 'text-after-result e5']],
    ['a number at the end', '1. e4 e5 2.', ['<1,1>e4 e5', 'number-without-move 2.']],
    ['a tag among the moves', '1. e4 [C "x"] e5', ['<1,1>e4 e5', 'tag-misplaced [C "x"]']],
    ['a bracket left open', '1. e4 [', ['<1,1>e4', 'text-unreadable [']],
  ])('%s does not reach into the next game', (_, broken, expected) => {
    expect(read(`[A "1"]\n\n1. c4 *\n\n[A "2"]\n\n${broken}\n\n[A "3"]\n\n1. d4 {a} *`)).toEqual([
      ['A=1', '<1,1>c4 *'],
      ['A=2', ...expected],
      ['A=3', '<1,1>d4{a} *'],
    ]);
  });

  test('a broken tag is mended within its game', () => {
    expect(read('[A "x"y"]\n[B "1"]\n\ne4 *\n\n[A "2"]\n\nd4 *')).toEqual([
      ['A=x"y', 'B=1', 'e4 *', 'tag-unreadable [A "x"y"]'],
      ['A=2', 'd4 *'],
    ]);
  });
});
