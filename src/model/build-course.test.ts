import { describe, expect, test } from 'vitest';
import { blockIndex, nodeAt } from './queries/node-at.ts';
import { movesSpokenOf } from './queries/spoken-of.ts';
import { courseOf } from './testing/course-of.ts';
import { misplaced } from './testing/misplaced.ts';
import { problemsIn } from './testing/problems-in.ts';
import type { Course } from './types.ts';

const moves = (text: string, attributes = '') => `\`\`\`moves${attributes}\n${text}\n\`\`\`\n\n`;

/** The move behind which a name stands. */
function named(course: Course, name: string): string | undefined {
  const ref = course.labels[name]?.ref;
  return ref && nodeAt(course, ref)?.move?.san;
}

const messages = (course: Course) => problemsIn(course).map(({ message }) => message);

describe('names', () => {
  test('of a comment, of prose, of a caption', () => {
    const course = courseOf(
      `${moves('1. d4 {:here[a]} d5')}Text :here[b], \`1.d4\` :here[c].\n\n` +
        '```diagram after="1. e4 c5"\ncaption: "Now :here[d]"\n```\n',
    );
    expect(['a', 'b', 'c', 'd'].map((name) => named(course, name))).toEqual([
      'd4',
      'd5',
      'd4',
      'c5',
    ]);
    expect(problemsIn(course)).toEqual([]);
  });

  test.each([
    ['a comment', moves('1. d4 d5 {:here[x]}')],
    ['prose', `${moves('1. d4 d5')}Here :here[x].`],
    ['prose behind a move', `${moves('1. d4 d5 2. Nf3')}After \`1...d5\` :here[x].`],
    ['a caption', '```diagram after="1. d4 d5"\ncaption: ":here[x]"\n```'],
  ])('may be used before they are given in %s', (_where, given) => {
    const before = moves('2. c4', ' from="x"');
    const inOne = courseOf(`${before}${given}`);
    const inTwo = courseOf({ 'chapters/1.md': before, 'chapters/2.md': given });
    for (const course of [inOne, inTwo]) {
      expect(course.chapters[0]?.blocks[0]?.nodes[1]?.move?.san).toBe('c4');
      expect(problemsIn(course)).toEqual([]);
    }
  });

  test('given twice count where they are given first in the text', () => {
    const course = courseOf({
      'chapters/1.md': `${moves('1. c4', ' from="y"')}${moves('1. d4 {:here[x]}')}`,
      'chapters/2.md': moves('1. e4 {:here[x]} e5 {:here[y]}'),
    });
    expect(named(course, 'x')).toBe('d4');
    expect(course.labels.x?.place.file).toBe('chapters/1.md');
  });

  test('where no move is shown have one problem', () => {
    const course = courseOf(`Here :here[x].\n\n${moves('1. d4', ' from="x"')}`);
    expect(messages(course)).toEqual([
      '`:here[…]` speaks of the last move shown, but this chapter shows no move before it.',
    ]);
    expect(course.labels.x).toBeUndefined();
    expect(course.chapters[0]?.names).toMatchObject([{ name: 'x' }]);
  });

  test.each([
    ['itself', moves('1. d4 {:here[x]}', ' from="x"')],
    ['itself through prose', `${moves('1. d4', ' from="x"')}:here[x]`],
    [
      'each other',
      moves('1. d4 {:here[y]}', ' from="x"') + moves('1... d5 {:here[x]}', ' from="y"'),
    ],
    ['a diagram of itself', '```diagram at="x"\ncaption: ":here[x]"\n```'],
  ])('of blocks that start from %s are a circle, told once', (_which, text) => {
    expect(messages(courseOf(text))).toEqual([
      expect.stringMatching(/^This block starts from `.`, but the way to that position leads/),
    ]);
  });
});

describe('moves in prose', () => {
  const targets = (text: string) => {
    const course = courseOf(text);
    const [paragraph] =
      course.chapters[0]?.body.children.filter(({ type }) => type === 'paragraph') ?? [];
    const [node] = paragraph && 'children' in paragraph ? paragraph.children : [];
    const [chapter] = course.chapters;
    if (node?.type !== 'proseMoves' || !chapter) return [];
    return movesSpokenOf(chapter, node).map((ref) => ref && blockIndex(chapter, ref.block));
  };

  test('are found in the nearest block above, variations included', () => {
    expect(targets(`${moves('1. e4 e5')}${moves('1. d4 (1. e4 c5) d5')}\`1.e4 c5\``)).toEqual([
      1, 1,
    ]);
    expect(targets(`${moves('1. e4 e5')}${moves('1. d4 d5')}\`1.e4 e5\``)).toEqual([0, 0]);
  });

  test('are found below where no block above has them', () => {
    const below = `${moves('2. c4', ' from="x"')}\`1.d4\`\n\n${moves('1. d4 d5 {:here[x]}')}`;
    expect(targets(below)).toEqual([1]);
  });
});

describe('the graph', () => {
  const keys = (text: string) => {
    const course = courseOf(text);
    return course.chapters.flatMap(({ blocks }) =>
      blocks.map(({ nodes }) => nodes.at(-1)?.position?.key),
    );
  };

  test('joins two move orders', () => {
    const course = courseOf(moves('1. d4 Nf6 2. c4 e6') + moves('1. c4 e6 2. d4 Nf6'));
    const end = course.chapters[0]?.blocks[0]?.nodes.at(-1)?.position?.key ?? '';
    const [first, second] = course.chapters[0]?.blocks.map(({ key }) => key) ?? [];
    expect(course.graph[end]?.at).toEqual([
      { chapter: 'chapters/1.md', block: first, node: 4 },
      { chapter: 'chapters/1.md', block: second, node: 4 },
    ]);
  });

  // FIDE Laws of Chess, article 9.2.3: positions are not the same if a pawn could have been
  // captured en passant (9.2.3.1), or if the right to castle has changed (9.2.3.2).
  test('keeps apart what article 9.2.3 keeps apart', () => {
    const [enPassant, none] = keys(
      moves('1. e4 a6 2. e5 d5') + moves('1. e3 d6 2. e4 d5 3. e5 a6'),
    );
    expect(enPassant).not.toBe(none);
    const [castling, lost] = keys(
      moves('1. e4 e5 2. Nf3 Nc6') + moves('1. e4 e5 2. Nf3 Nc6 3. Ke2 Ke7 4. Ke1 Ke8'),
    );
    expect(castling?.split(' ')[0]).toBe(lost?.split(' ')[0]);
    expect(castling).not.toBe(lost);
  });

  test('a double step that no pawn can answer leaves no right', () => {
    const [first, second] = keys(moves('1. d4 d5 2. c4') + moves('1. c4 d5 2. d4'));
    expect(first).toBe(second);
  });

  test('holds the moves of blocks only, not those of diagrams, exercises and games', () => {
    const course = courseOf('```diagram after="1. d4"\n```\n\n```game\n1. e4 e5\n```\n');
    expect(Object.keys(course.graph)).toEqual([]);
  });
});

test('a move that cannot be played keeps its fault and does not hide the other lines', () => {
  const [block] = courseOf(moves('1. e4 e5 2. Ke3 (2. Nf3 Nc6) Nf6')).chapters[0]?.blocks ?? [];
  expect(block?.nodes.map(({ fault }) => fault?.kind)).toEqual([
    undefined,
    undefined,
    undefined,
    'illegal',
    undefined,
    undefined,
    'after-fault',
  ]);
});

test('a FEN is told at its wrong field, and a sound one starts the block', () => {
  const text = moves('12... Kd7', ' fen="4k3/8/8/8/8/8/8/4K3 b - - 0 12"');
  expect(courseOf(text).chapters[0]?.blocks[0]?.nodes[1]?.move).toMatchObject({
    san: 'Kd7',
    number: 12,
  });
  const wrong = text.replace('4K3 b', '4K2 b');
  const [problem] = problemsIn(courseOf(wrong));
  expect(problem?.message).toMatch(/^This FEN is no position: /);
  expect(misplaced(courseOf(wrong), { 'chapters/1.md': wrong })).toEqual([]);
});

test('what prose says of a diagram is drawn at the end of its main line', () => {
  const course = courseOf('```diagram after="1. d4 d5 (1... Nf6)"\n```\n\nSee :mark[e4].');
  const [block] = course.chapters[0]?.blocks ?? [];
  expect(block).toMatchObject({ kind: 'diagram', marks: ['e4'], lastMove: { to: 'd5' } });
});

test.each([
  ['3... d6 4. d4', ' form="x"', 'after-fault'],
  ['3... d6 4. d4', '', 'illegal'],
  ['1. d6', ' form="x"', 'illegal'],
])('%s with%s: a start in doubt judges no moves of another number', (text, attributes, fault) => {
  const [block] = courseOf(moves(text, attributes)).chapters[0]?.blocks ?? [];
  expect(block?.nodes[1]?.fault?.kind).toBe(fault);
});
