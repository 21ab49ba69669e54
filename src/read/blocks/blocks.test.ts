import { describe, expect, test } from 'vitest';
import { problemsOf, readOne } from '../testing/read-one.ts';

const messages = (text: string) => readOne(text).problems.map(({ message }) => message);

describe('attributes', () => {
  test('are read with their places, in either quotes or none', () => {
    const text = '- ```moves from="a" view=\'black\'\n  1. e4\n  ```';
    const [block] = readOne(text).blocks;
    expect(block).toMatchObject({ kind: 'moves', view: 'black', from: { text: 'a' } });
    const place = block?.kind === 'moves' ? block.from?.place : undefined;
    expect(text.slice(place?.start.offset, place?.end.offset)).toBe('a');
  });

  test.each([
    ['form="x"', 'form: A `moves` block has no attribute `form`.'],
    ['view="green"', 'green: `green` is no side to view the board from.'],
    ['from="a b"', 'a b: `a b` is no name for a position.'],
    ['view="white" view="black"', 'view: The attribute `view` is given twice.'],
    [
      'from="a" fen="4k3/8/8/8/8/8/8/4K3 w - - 0 1"',
      'fen: This block says twice where it starts: `from` and `fen`.',
    ],
    ['{x}', '{x}: This cannot be read as an attribute.'],
    ['from="a', 'from="a: The value of `from` begins with a quotation mark that is never closed.'],
  ])('%s', (attributes, expected) => {
    expect(problemsOf(`\`\`\`moves ${attributes}\n1. e4\n\`\`\``)).toEqual([expected]);
  });
});

describe('names of blocks', () => {
  test.each([
    ['move', 'Did you mean `moves`?'],
    ['Moves', 'Did you mean `moves`?'],
    ['diagramm', 'Did you mean `diagram`?'],
    ['moves{view=white}', 'Write a space behind `moves`, and attributes as name="value".'],
  ])('%s', (name, hint) => {
    expect(readOne(`\`\`\`${name}\nx\n\`\`\``).problems).toMatchObject([{ hint }]);
  });

  test.each(['js', 'yaml', 'make', 'text', 'c++', ''])('%j is other code', (name) => {
    const draft = readOne(`\`\`\`${name}\nx\n\`\`\``);
    expect(draft.problems).toEqual([]);
    expect(draft.body.children).toMatchObject([{ type: 'code', value: 'x' }]);
  });
});

describe('a block that is not closed', () => {
  test.each([
    '```moves',
    '```moves\n1. e4',
    '```moves\n1. e4 e5\n\nA text, with `7.Bg2`.\n\n- a list',
    '```moves\n1. e4 ```\n\nText',
    '```moves\n1. e4\n    ```\n\nText',
    '````moves\n1. e4\n```\n\nText',
    '> ```moves\n> 1. e4\n\nText',
    '~~~moves\n1. e4\n```\n\nText',
  ])('%j gives one finding', (text) => {
    expect(messages(text)).toEqual([
      'This `moves` block is opened here and never closed: all that follows is taken for a part of it.',
    ]);
  });

  test('is read up to its first empty line, whatever lines end with', () => {
    const text = '```moves\n1. e4\nside: white\n\nText';
    for (const end of ['\n', '\r\n', '\r']) {
      const found = problemsOf(text.replaceAll('\n', end));
      expect(found, JSON.stringify(end)).toContain('side: white: “side: white” cannot be a move.');
    }
  });

  test('before the next block names that one', () => {
    const text = '```moves\n1. e4\n\nText.\n\n```diagram at="x"\ncaption: y\n```\n\nMore.';
    expect(messages(text)).toEqual([
      'This `moves` block is opened here and not closed before the next block, in line 6.',
    ]);
  });

  test.each([
    '```moves\n```',
    '```moves\n\n```',
    '```moves\n1. e4\n`````',
    '> ```moves\n> 1. e4\n> ```  ',
  ])('%j is closed', (text) => {
    // An empty block has a finding of its own.
    expect(messages(text).filter((message) => !message.includes('is empty'))).toEqual([]);
  });
});

describe('front matter', () => {
  const required = (text: string) => problemsOf(text);

  test.each([
    [
      '---\ntitle: A\nsummary: B\nid: some-name\n---\n\nText',
      { title: 'A', summary: 'B', id: 'some-name' },
    ],
    ['---\r\ntitle: "A: B"\r\n---\r\n', { title: 'A: B', id: '1' }],
  ])('%j', (text, expected) => {
    expect(readOne(text)).toMatchObject({ ...expected, problems: [] });
  });

  test.each([
    ['---\ntitle: A\nid: index\n---', /^index: `id` must be another word/],
    ['---\ntitle: A\nid: a b\n---', /^a b: `id` must be letters, digits and hyphens/],
    ['---\ntitle: [a]\n---', /^\[a\]: `title` must be a text/],
    ['---\ntitle:\n---', /^: `title` must be a text/],
    ['---\ntitle: A\ntitel: B\n---', /^titel: The front matter has no `titel`/],
    [
      '---\ntitle: A: B\n---',
      /^A: B: The front matter cannot be read here: a value that contains `: `/,
    ],
  ])('%j', (text, expected) => {
    expect(required(text)).toEqual([expect.stringMatching(expected)]);
  });
});

test('one wrong line of a block does not hide the others', () => {
  const [block] = readOne(
    '```diagram after="1. e4"\ncaption: Words\ncolour: red\nmark: e4\nalt: 3\n```',
  ).blocks;
  expect(block).toMatchObject({ marks: [{ text: 'e4' }], caption: [{ value: 'Words' }] });
});

test('a directive in a quoted caption is read without its escapes', () => {
  const [block] = readOne(
    '```diagram after="1. e4"\ncaption: "So :end[he says \\"no\\"]"\n```',
  ).blocks;
  expect(block?.kind === 'diagram' && block.caption.at(-1)).toMatchObject({
    type: 'courseDirective',
    argument: 'he says "no"',
  });
});

describe('what could not mean anything is told', () => {
  const exercise = (body: string) => `\`\`\`exercise after="1. e4"\nask: Which?\n${body}\n\`\`\``;
  const pattern = (body: string) => `\`\`\`pattern\ntitle: A\n${body}\n\`\`\``;

  test.each([
    ['```game\n```', '```game: This game has no moves.'],
    ['```game\n[White "A. Coach"]\n\n*\n```', '```game: This game has no moves.'],
    [
      '```game file="games/a.pgn"\n\n1. e4\n1... e5\n\n```',
      '1. e4\n1... e5: This block takes its game from games/a.pgn, so what stands in it is not read.',
    ],
    [exercise('answer: ""'), '"": No move stands under `answer` here.'],
    [exercise('answer: []'), '[]: No move stands under `answer` here.'],
    [
      exercise('answer: 1... e5\nwrong:\n  - 1... d5\n  - "{Words}"'),
      '"{Words}": No move stands under `wrong` here.',
    ],
    [
      exercise('answer: 2. Nf3\nbefore: 1... e5 2. Nc3'),
      'Nc3: More than one move stands under `before` here.',
    ],
    [exercise('answer: 2. Nf3\nbefore: ""'), '"": No move stands under `before` here.'],
    [
      '```exercise after="1. e4" before="1... e5"\nask: Which?\nbefore: 1... e5\nanswer: 2. Nf3\n```',
      'before: This exercise says twice which move comes before it.',
    ],
    [pattern('white: d4 Nd4'), 'Nd4: Two pieces of this pattern stand on d4.'],
    [pattern('white: d4\nblack: [d4]'), 'd4: Two pieces of this pattern stand on d4.'],
    [pattern('white: d1 d4'), 'd1: No pawn can stand on d1.'],
    [pattern('black: Ke8 Kd8\nwhite: Ke1'), "Kd8: This pattern has two kings of Black's."],
    [
      pattern('white: d4\nempty: e5 d4'),
      'd4: d4 must be empty in this pattern, and a piece of it stands there.',
    ],
  ])('%j', (text, expected) => {
    expect(problemsOf(text, [], { 'games/a.pgn': '1. d4 *' })).toEqual([expected]);
  });
});

describe('games that a chapter takes from files', () => {
  const game = (moves: string) => `[White "A"]\n\n${moves} *\n\n`;
  const block = (number: number) => `\`\`\`game file="games/a.pgn" number=${number}\n\`\`\`\n\n`;

  test('may have as many signs as a chapter, each time they are shown', () => {
    const games = { 'games/a.pgn': game(`1. e4 {${'a '.repeat(200_000)}} e5`) };
    expect(problemsOf(block(1).repeat(2), [], games)).toEqual([]);
    expect(problemsOf(block(1).repeat(4), [], games)).toEqual([
      expect.stringContaining('The games that this chapter takes from files have more than 1 MB'),
      expect.stringContaining('The games that this chapter takes from files have more than 1 MB'),
    ]);
  });

  test('one that is longer than any game can be is refused, and its neighbours are not', () => {
    const games = {
      'games/a.pgn': game('1. e4 e5') + game(`1. d4 ${'{} '.repeat(250_000)}`) + game('1. c4 c5'),
    };
    expect(problemsOf(block(1) + block(2) + block(3), [], games)).toEqual([
      '2: This game of games/a.pgn is longer than any game can be, with its comments and variations.',
    ]);
  });
});
