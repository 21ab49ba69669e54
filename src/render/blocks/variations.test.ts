import { expect, test } from 'vitest';
import { readableText, renderCourse } from '../../site/render/testing/render-course.ts';

function lines(moves: string): string[] {
  const [page = ''] = renderCourse([`\`\`\`moves\n${moves}\n\`\`\`\n`]).map(readableText);
  return page.split('\n');
}

test('one or two short variations stay in their sentence', () => {
  expect(lines('1. e4 e5 (1... c5) (1... e6 2. d4 d5) 2. Nf3')).toEqual([
    '1. e4 e5 (1... c5) (1... e6 2. d4 d5) 2. Nf3',
  ]);
});

test('where one is long or there are more, all beside it are a list, lettered', () => {
  expect(lines('1. e4 e5 (1... c5) (1... e6 2. d4 d5 3. Nc3 Nf6) 2. Nf3')).toEqual([
    '1. e4 e5',
    'a) 1... c5',
    'b) 1... e6 2. d4 d5 3. Nc3 Nf6',
    '2. Nf3',
  ]);
  expect(lines('1. e4 e5 (1... c5) (1... e6) (1... c6)')).toEqual([
    '1. e4 e5',
    'a) 1... c5',
    'b) 1... e6',
    'c) 1... c6',
  ]);
});

test('within a variation each has a name of its own; beside another move of the main line they begin anew', () => {
  const long = 'Bb5 a6 4. Ba4 Nf6 5. O-O';
  expect(
    lines(
      `1. e4 e5 (1... c5 2. Nf3 d6 (2... Nc6 3. ${long}) 3. d4 cxd4 (3... Nf6 4. Nc3 cxd4 5. Nxd4 a6)) 2. Nf3 Nc6 (2... d6 3. d4 exd4 4. Nxd4 Nf6 5. Nc3)`,
    ),
  ).toEqual([
    '1. e4 e5',
    'a) 1... c5 2. Nf3 d6',
    `a1) 2... Nc6 3. ${long}`,
    '3. d4 cxd4',
    'a2) 3... Nf6 4. Nc3 cxd4 5. Nxd4 a6',
    '2. Nf3 Nc6',
    'a) 2... d6 3. d4 exd4 4. Nxd4 Nf6 5. Nc3',
  ]);
});
