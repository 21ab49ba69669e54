import { expect, test } from 'vitest';
import { readCourse } from '../read/index.ts';
import { buildCourse } from './build-course.ts';
import { modelLimits } from './model-limits.ts';
import { problemsIn } from './testing/problems-in.ts';

const moves = (text: string, attributes = '') => `\`\`\`moves${attributes}\n${text}\n\`\`\`\n`;

function problemsOf(text: string, limits: Partial<typeof modelLimits> = {}): string[] {
  const draft = readCourse(
    {
      settings: { path: 'course.yaml', text: 'title: A\nid: a\nside: white\n' },
      chapters: [{ path: 'chapters/1.md', text }],
      games: [],
      media: [],
      problems: [],
    },
    { frontMatter: 'optional' },
  );
  return problemsIn(buildCourse(draft, { ...modelLimits, ...limits })).map(
    ({ place, message }) => `${place.start.line}: ${message}`,
  );
}

test('moves in texts are looked for up to a number of places, and then not said to be unknown', () => {
  const text = `${moves('1. e4 e5')}\n${'`9.Qh5`\n\n'.repeat(20)}`;
  expect(problemsOf(text, { places: 21 })).toEqual([]);
  expect(problemsOf(text, { places: 10 })).toEqual([
    '23: From here on the moves in the texts are not looked for: more than 10 places have been looked at.',
  ]);
});

test('patterns are looked for in a number of positions', () => {
  const pattern = '```pattern\ntitle: x\nwhite: e4\n```\n\n';
  const text = moves('1. e4 e5') + pattern.repeat(3);
  expect(problemsOf(text, { matched: 9 })).toEqual([]);
  expect(problemsOf(text, { matched: 8 })).toEqual([
    '14: This pattern is not looked for: with those before it, it would be compared 9 times with a position.',
  ]);
});

test('any number of blocks may start from one another, but for names in prose against the order of the text', () => {
  const chain = (order: (index: number) => number, where: 'comment' | 'prose' = 'comment') =>
    Array.from({ length: 600 }, (_, index) => {
      const at = order(index);
      const from = at === 0 ? '' : ` from="a${at}"`;
      const name = `:here[a${at + 1}]`;
      const [knight, back] = at % 2 ? ['Nf6', 'Ng1'] : ['Nf3', 'Ng8'];
      if (where === 'prose') return `${moves(`${knight} ${back}`, from)}\n${name}\n\n`;
      return moves(`${knight} {${name}} ${back}`, from);
    }).join('');
  // The knights go out and back; only whether the blocks are reached counts here.
  expect(problemsOf(chain((index) => index))).toEqual([]);
  expect(problemsOf(chain((index) => 599 - index))).toEqual([]);
  expect(problemsOf(chain((index) => index, 'prose'))).toEqual([]);
  expect(problemsOf(chain((index) => 599 - index, 'prose'))).toEqual([
    expect.stringContaining('More than 500 blocks start from one another here'),
  ]);
});
