/** Games, exercises and patterns: what is computed from the whole course. */
import { describe, expect, test } from 'vitest';
import { nodeAt } from './queries/node-at.ts';
import { courseOf } from './testing/course-of.ts';
import { problemsIn } from './testing/problems-in.ts';
import type { Course, GameBlock, PatternBlock } from './types.ts';

const moves = (text: string) => `\`\`\`moves\n${text}\n\`\`\`\n\n`;
const game = (text: string, attributes = '') => `\`\`\`game${attributes}\n${text}\n\`\`\`\n\n`;
const pattern = (body: string) => `\`\`\`pattern\ntitle: A\n${body}\n\`\`\`\n\n`;

const blocks = (course: Course) => course.chapters.flatMap((chapter) => chapter.blocks);
const gameOf = (course: Course) =>
  blocks(course).find((block): block is GameBlock => block.kind === 'game');
const patternOf = (course: Course) =>
  blocks(course).find((block): block is PatternBlock => block.kind === 'pattern');

const line = '1. e4 e5 2. Nf3 {:here[knight]} Nc6 3. Bb5 {:here[bishop]}';

describe('a game', () => {
  const played = '1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Ba4 Nf6 1/2-1/2';
  const shown = (attributes: string) => {
    const found = gameOf(courseOf(moves(line) + game(played, attributes)));
    return [found?.first, found?.last].map((node) => found?.nodes[node ?? 0]?.move?.san ?? 'start');
  };

  test.each([
    ['', ['start', 'Nf6']],
    [' from=2', ['e5', 'Nf6']],
    [' to=2', ['start', 'Nc6']],
    [' from=3 to=3', ['Nc6', 'a6']],
    [' from="knight" to="bishop"', ['Nf3', 'Bb5']],
    [' from="knight" to=4', ['Nf3', 'Nf6']],
  ])('is shown %s', (attributes, expected) => {
    expect(shown(attributes)).toEqual(expected);
  });

  test.each([' from=3 to=2', ' from="bishop" to="knight"', ' from="knight" to="knight"'])(
    'cannot be shown %s',
    (attributes) => {
      const problems = problemsIn(courseOf(moves(line) + game(played, attributes)));
      expect(problems.map(({ message }) => message)).toEqual([
        expect.stringMatching(/^The game has no move from `\w+` to `\w+`\.$/),
      ]);
    },
  );

  test('with a wrong FEN tag has that fault only', () => {
    const course = courseOf(game('[FEN "4k3/8/8/8/8/8/8/4K2R w KQ - 0 30"]\n\n30. O-O Kd7 *'));
    expect(problemsIn(course).map(({ message }) => message)).toEqual([
      expect.stringMatching(/^This FEN is no position: White cannot have the right to castle/),
    ]);
    expect(
      gameOf(course)
        ?.nodes.slice(1)
        .map(({ fault }) => fault?.kind),
    ).toEqual(['after-fault', 'after-fault']);
  });

  test('starts from its FEN tag, and a limit counts as that does', () => {
    const fen = '4k3/8/8/8/8/8/8/4K2R w K - 0 30';
    const course = courseOf(
      game(`[SetUp "1"]\n[FEN "${fen}"]\n\n30. O-O Kd7 31. Kf2 *`, ' from=31'),
    );
    const found = gameOf(course);
    expect(found?.nodes[0]?.position?.fen).toBe(fen);
    expect(found?.nodes.map(({ move }) => move?.san)).toEqual([undefined, 'O-O', 'Kd7', 'Kf2']);
    expect(found?.first).toBe(2);
    expect(problemsIn(course)).toEqual([]);
  });

  test.each([
    // By another order of moves; left at the move that the course does not have.
    [line, '1. Nf3 Nc6 2. e4 e5 3. Bc4', ['e5', 'Bc4']],
    // Back in the course after a detour.
    [line, '1. Nf3 Nf6 2. Ng1 Ng8 3. e4 e5 4. Nc3', ['e5', 'Nc3']],
    // To its end.
    [line, '1. e4 e5 2. Nf3', ['Nf3', undefined]],
    // Only the initial position is common.
    [line, '1. d4 d5', [undefined, undefined]],
    // What other games and variations of this game hold is no course.
    [line, '1. d4 (1. e4 e5) d5', [undefined, undefined]],
  ])('leaves the course %s', (course, text, [at, next]) => {
    const found = gameOf(courseOf(moves(course) + game(text)));
    const { leaves } = found ?? {};
    expect(leaves && found?.nodes[leaves.node]?.move?.san).toBe(at);
    expect(leaves?.next === undefined ? undefined : found?.nodes[leaves.next]?.move?.san).toBe(
      next,
    );
  });

  test('leaves the course at its start, where that is a position that the course knows', () => {
    const fen = 'rnbqkbnr/pppp1ppp/8/4p3/4P3/8/PPPP1PPP/RNBQKBNR w KQkq - 0 2';
    const found = gameOf(courseOf(moves(line) + game(`[SetUp "1"]\n[FEN "${fen}"]\n\n2. f4`)));
    expect(found?.leaves).toMatchObject({ node: 0, next: 1 });
  });
});

describe('an exercise', () => {
  test('plays every line from its position, whatever way the position is given', () => {
    const body =
      'ask: Which?\nanswer:\n  - 3. Bb5 a6 (3... Nf6 4. O-O)\n  - Bc4\nwrong: 3. h4 {Slow.}';
    const start = 'r1bqkbnr/pppp1ppp/2n5/4p3/4P3/5N2/PPPP1PPP/RNBQKB1R w KQkq - 2 3';
    for (const from of ['at="x"', `fen="${start}"`, 'after="1. e4 e5 2. Nf3 Nc6"']) {
      const course = courseOf(
        `${moves('1. e4 e5 2. Nf3 Nc6 {:here[x]}')}\`\`\`exercise ${from}\n${body}\n\`\`\`\n`,
      );
      const found = blocks(course)[1];
      if (found?.kind !== 'exercise') throw new Error('no exercise');
      expect(found.position?.fen).toBe(start);
      const sans = (lines: typeof found.answer) =>
        lines.map((nodes) => nodes.slice(1).map(({ move }) => move?.san));
      expect(sans(found.answer)).toEqual([['Bb5', 'a6', 'Nf6', 'O-O'], ['Bc4']]);
      expect(sans(found.wrong)).toEqual([['h4']]);
      expect(problemsIn(course)).toEqual([]);
    }
  });

  test('adds nothing to the graph', () => {
    const course = courseOf('```exercise after="1. e4"\nask: Which?\nanswer: 1... e5\n```\n');
    expect(course.graph).toEqual({});
  });
});

describe('a pattern', () => {
  const matches = (course: string, body: string) => {
    const built = courseOf(moves(course) + pattern(body));
    return patternOf(built)?.matches.map(({ key, reversed }) => {
      const ref = built.graph[key]?.at[0];
      const node = ref && nodeAt(built, ref);
      return `${node?.move?.san ?? 'start'}${reversed ? ' reversed' : ''}`;
    });
  };

  test('is found in every position that has it, in variations too, each once', () => {
    expect(matches('1. d4 (1. e4 e5) d5 2. c4 (2. e4)', 'white: e4')).toEqual(['e4', 'e5', 'e4']);
    const twice = courseOf(
      moves('1. d4 Nf6 2. c4') + moves('1. c4 Nf6 2. d4') + pattern('white: c4 d4'),
    );
    expect(patternOf(twice)?.matches).toHaveLength(1);
  });

  test('takes a square that must be empty at its word', () => {
    expect(matches('1. d4 d5 2. Nc3', 'white: d4\nempty: b1')).toEqual(['Nc3']);
  });

  test('with the colours exchanged stands on the mirrored ranks', () => {
    expect(matches('1. e4 c5 2. c4 e5', 'white: c4\nreversed: true')).toEqual([
      'c5 reversed',
      'c4',
      'e5',
    ]);
    expect(matches('1. e4 c5', 'white: c4')).toEqual([]);
    expect(matches('1. Nf3 Nf6', 'black: Nf6\nempty: g8\nreversed: true')).toEqual([
      'Nf3 reversed',
      'Nf6',
    ]);
  });
});
