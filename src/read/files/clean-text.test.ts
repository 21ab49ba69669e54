import { expect, test } from 'vitest';
import { readSettings } from '../settings/read-settings.ts';
import { problemsOf, readOne } from '../testing/read-one.ts';

// XML 1.0, 2.2: an e-book that holds one of these opens nowhere. Terminals act on the first.
test.each([
  '\u001b',
  '\u0000',
  '\u000b',
  '\u000c',
  '\u007f',
  '\u009b',
  '\uffff',
  '\u{1ffff}',
  '\ud83d',
])('%j in a text is a finding at its place, and a space to all that reads on', (character) => {
  const text = `One ${character}two.\n\n\`\`\`moves\n1. e4${character}e5\n\`\`\`\n`;
  expect(problemsOf(text)).toEqual([
    expect.stringMatching(`^${character}: A character that cannot be printed stands here: U\\+`),
  ]);
  const { blocks, body } = readOne(text);
  expect(blocks).toMatchObject([{ moves: { nodes: { length: 3 } } }]);
  expect(JSON.stringify(body)).not.toContain(JSON.stringify(character).slice(1, -1));
});

test('several are one finding, which tells their number', () => {
  expect(readOne('a\u0007 b\u0008 c\u001b').problems).toMatchObject([
    { place: { start: { column: 2 } }, hint: expect.stringContaining('has 3 such characters') },
  ]);
});

test.each(['"\\e[31m"', '"\\0"', '"\\x9b"', '"\\uD83D"', '"\\uFFFE"'])(
  'the code %s in YAML is a finding too',
  (value) => {
    const { settings, problems } = readSettings({
      path: 'course.yaml',
      text: `title: ${value}\nside: white\n`,
    });
    const found = problems.filter(({ message }) => message.includes('cannot be printed: U+'));
    expect(found).toMatchObject([{ place: { start: { line: 1, column: 8 } } }]);
    expect(settings.title).not.toMatch(/[\p{Cc}\p{Cs}\uFFFE]/u);
  },
);

test('tabs, line ends, marks of direction and joined characters are texts of people', () => {
  expect(
    readOne('a\tb\r\nc \u200f\u202bd\u202c e\u0301 \u{1f468}\u200d\u{1f469} \u2028').problems,
  ).toEqual([]);
});

test('a lone CR ends a line, also where the next has an LF', () => {
  const text = '---\rtitle: One\r---\r\r ```game \r \nh4 ';
  const { title, blocks } = readOne(text);
  expect(title).toBe('One');
  const [block] = blocks;
  const moves = block?.kind === 'game' ? block.moves : undefined;
  expect(text.slice(moves?.nodes[1]?.written?.place.start.offset)).toBe('h4 ');
});
