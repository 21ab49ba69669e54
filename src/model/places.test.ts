/** Places are exact to the character, wherever moves stand and whatever ends their lines. */
import { describe, expect, test } from 'vitest';
import { courseOf } from './testing/course-of.ts';
import { misplaced } from './testing/misplaced.ts';
import { problemsIn } from './testing/problems-in.ts';
import type { Course, MoveNode } from './types.ts';

const movesText =
  '1. d4! {A *pawn* :here[a]} d5 $2 ( 1... Nf6 ; so\n2. c4 ) 2. c4 {:plan[c4-d5] 😀 :mark[d5]} e6?!';

const moves = `\`\`\`moves\n${movesText}\n\`\`\``;

function prefixed(text: string, first: string, others: string): string {
  return text
    .split('\n')
    .map((line, index) => (index === 0 ? first : others) + line)
    .join('\n');
}

function movesOf(course: Course): MoveNode[] {
  return course.chapters.flatMap(({ blocks }) =>
    blocks.flatMap(({ nodes }) => nodes.filter(({ written }) => written)),
  );
}

const layouts: Readonly<Record<string, string>> = {
  'at the margin': moves,
  'behind prose': `Some *prose*.\n\n${moves}\n\nMore.`,
  'behind front matter': `---\ntitle: One\n---\n\n${moves}`,
  'in a list': prefixed(moves, '- ', '  '),
  'in a numbered list, the second paragraph': `1. Item\n\n${prefixed(moves, '   ', '   ')}`,
  'in a quote': prefixed(moves, '> ', '> '),
  'in a quote without spaces': prefixed(moves, '>', '>'),
  'in a list in a quote': prefixed(prefixed(moves, '- ', '  '), '> ', '> '),
  'indented by three': prefixed(moves, '   ', '   '),
  'indented less than its fence': prefixed(moves, '   ', ' '),
  'in a list, with tabs': prefixed(moves, '- ', '\t'),
  'with tabs between moves': moves.replaceAll(' ', '\t').replace('```\tmoves', '```moves'),
  'in tildes': moves.replaceAll('```', '~~~~'),
  'behind astral characters': `𝔸 😀😀 \`1.d4\`\n\n${moves}`,
};

const ends = { LF: '\n', 'CR LF': '\r\n', CR: '\r' };

describe.each(Object.entries(ends))('lines end with %s', (_name, end) => {
  test.each(Object.entries(layouts))('%s', (_layout, lf) => {
    const text = lf.replaceAll('\n', end);
    const course = courseOf(text);
    expect(misplaced(course, { 'chapters/1.md': text })).toEqual([]);
    expect(movesOf(course).map(({ written }) => written?.san)).toEqual([
      'd4',
      'd5',
      'Nf6',
      'c4',
      'c4',
      'e6',
    ]);
    expect(movesOf(course).every(({ fault }) => fault === undefined)).toBe(true);
    expect(movesOf(course).map(({ labels }) => labels.join())).toContain('a');
    expect(movesOf(course).flatMap(({ marks }) => marks)).toEqual(['d5']);
    expect(problemsIn(course)).toEqual([]);
  });
});

test('a place counts columns in UTF-16 units', () => {
  const [d4] = movesOf(courseOf('```moves\n{😀} 1. d4\n```'));
  expect(d4?.written?.place).toEqual({
    file: 'chapters/1.md',
    start: { line: 2, column: 9, offset: 17 },
    end: { line: 2, column: 11, offset: 19 },
  });
});

const exercise = (answer: string) =>
  `\`\`\`exercise after="1. e4 e5"\nask: Which move?\nanswer: ${answer}\n\`\`\``;

test.each([
  ['plain', exercise('2. Nf3 Nc6')],
  ['in quotes', exercise('"2. Nf3 Nc6"')],
  ['in single quotes', exercise("'2. Nf3 {it''s so} Nc6'")],
  ['in quotes with an escape', exercise('"2. Nf3 {\\u00e9} Nc6"')],
  ['folded over lines', exercise('2. Nf3\n  Nc6 3. Bb5')],
  ['literal', exercise('|\n  2. Nf3\n  Nc6')],
  ['folded', exercise('>-\n    2. Nf3\n    Nc6\n\n    3. Bb5')],
  ['a list', exercise('\n  - 2. Nf3 Nc6\n  - "2. Bc4"')],
])('moves in YAML, %s', (_style, text) => {
  for (const end of ['\n', '\r\n']) {
    const file = text.replaceAll('\n', end);
    const course = courseOf(file);
    expect(misplaced(course, { 'chapters/1.md': file })).toEqual([]);
    const [block] = course.chapters[0]?.blocks ?? [];
    const answers = block?.kind === 'exercise' ? block.answer : [];
    expect(answers[0]?.[1]?.move?.san).toBe('Nf3');
    expect(answers.flat().every(({ fault }) => fault === undefined)).toBe(true);
  }
});

test('the squares of a list in YAML have places of their own', () => {
  const text = '```diagram after="1. e4"\nmark: "e4 z9"\nplan: [f1-c4, "x1-x2"]\n```';
  const problems = problemsIn(courseOf(text));
  const places = problems.map(({ place }) => text.slice(place.start.offset, place.end.offset));
  expect(places).toEqual(['z9', 'x1-x2']);
});

test('moves of an attribute stand in the opening line', () => {
  const text = '> - ```diagram view="black" after="1. d4 {:here[a]} Nf6"\n>   caption: x\n>   ```';
  const course = courseOf(text);
  expect(movesOf(course)).toHaveLength(2);
  expect(misplaced(course, { 'chapters/1.md': text })).toEqual([]);
});

test('a game of a file has its places there', () => {
  const files = {
    'chapters/1.md': '```game file="games/a.pgn" number=2\n```',
    'games/a.pgn': '[Event "A"]\r\n\r\n1. e4 *\r\n\r\n[Event "B"]\r\n\r\n1. d4 {x} d5 1/2-1/2\r\n',
  };
  const course = courseOf(files);
  expect(movesOf(course).map(({ written }) => written?.place.file)).toEqual([
    'games/a.pgn',
    'games/a.pgn',
  ]);
  expect(misplaced(course, files)).toEqual([]);
});
