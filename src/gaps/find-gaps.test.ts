import { describe, expect, test } from 'vitest';
import { makeEngineFacts, noFacts, parseFactsFile } from '../facts/index.ts';
import type { Course } from '../model/index.ts';
import { courseOf } from '../model/testing/course-of.ts';
import { findGaps, type GapOptions } from './find-gaps.ts';

const moves = (text: string, attributes = '') => `\`\`\`moves${attributes}\n${text}\n\`\`\`\n`;

const none: GapOptions = {
  facts: noFacts,
  margin: 0.5,
  games: () => 0,
  played: () => [],
  least: 2,
};

/** The gaps in short: where, what, why. */
function gapsOf(course: Course, options: Partial<GapOptions> = {}): string[] {
  return findGaps(course, { ...none, ...options }).map(
    ({ name, place, known, engine, games }) =>
      `${place.line}:${place.column} ${place.behind} | ${name}${known ? ` known:${known.line}` : ''}${engine ? ` #${engine.rank} ${engine.loss}` : ''}${games ? ` ${games} games` : ''}`,
  );
}

describe('a reply that lands in a position the course knows', () => {
  test('is missing where the other order of moves would have come there', () => {
    const course = courseOf(moves('1. d4 d5 (1... Nf6 2. c4 d5) 2. c4 e6'));
    // 2...Nf6 leads to the position after 1...Nf6 2.c4 d5.
    expect(gapsOf(course)).toEqual(['2:36 2...e6 | 2...Nf6 known:2']);
  });

  test('also where the course ends', () => {
    const course = courseOf(moves('1. d4 d5 (1... Nf6 2. c4 d5) 2. c4'));
    expect(gapsOf(course)).toEqual(['2:33 2.c4 | 2...Nf6 known:2']);
  });

  test('a move of the course’s own side is no reply, nor is one behind an option', () => {
    const white = moves('1. d4 d5 (1... Nf6 2. c4 d5) 2. c4 {:option[or so]} e6');
    expect(gapsOf(courseOf(white))).toEqual([]);
    expect(gapsOf(courseOf(moves('1. d4 d5 2. c4 e6 (2... Nf6) (1. c4 d5)')))).toEqual([]);
  });
});

describe('a reply among the best of an engine', () => {
  const key = 'rnbqkbnr/pppppppp/8/8/4P3/8/PPPP1PPP/RNBQKBNR b KQkq -';
  const { facts } = parseFactsFile(
    `${key}\tE 1\tdepth 9\t9\t-0.20 c5; -0.25 e5; -0.60 e6; -0.90 d5\n`,
  );
  const options = { facts: makeEngineFacts(facts) };

  test('is missing as long as it is not much worse', () => {
    expect(gapsOf(courseOf(moves('1. e4 e5 2. Nf3')), options)).toEqual([
      '2:7 1...e5 | 1...c5 #1 0',
      '2:7 1...e5 | 1...e6 #3 0.4',
    ]);
  });

  test('but not where the course has ended', () => {
    expect(gapsOf(courseOf(moves('1. e4')), options)).toEqual([]);
  });

  test('nor before the subject starts', () => {
    const files = (begins: string) => ({
      ...courseOf(moves('1. e4 e5 {:here[open]} 2. Nf3 Nc6 {:here[on]}')),
      ...{ settings: { ...courseOf('').settings, begins } },
    });
    expect(gapsOf(files('open'), options)).toEqual([]);
    const course = courseOf(moves('1. e4 {:here[first]} e5 2. Nf3'));
    const settings = { ...course.settings, begins: 'first' };
    expect(gapsOf({ ...course, settings }, options)).toHaveLength(2);
  });
});

describe('a reply frequent in games', () => {
  const games = (counts: Readonly<Record<string, number>>) => ({
    played: () => Object.keys(counts),
    games: (_key: string, san: string) => counts[san] ?? 0,
  });

  test('is missing, the most frequent first; one that was played too seldom is none', () => {
    const course = courseOf(moves('1. e4 e5 2. Nf3'));
    expect(gapsOf(course, games({ c5: 40, e6: 7, a6: 1, e5: 90, c6: 9 }))).toEqual([
      '2:7 1...e5 | 1...c5 40 games',
      '2:7 1...e5 | 1...c6 9 games',
      '2:7 1...e5 | 1...e6 7 games',
    ]);
  });

  test('comes behind one for which more reasons speak', () => {
    const course = courseOf(moves('1. d4 d5 (1... Nf6 2. c4 d5) 2. c4 e6'));
    const [first] = gapsOf(course, games({ Nf6: 3, c6: 50 }));
    expect(first).toContain('2...Nf6 known:2 3 games');
  });
});
