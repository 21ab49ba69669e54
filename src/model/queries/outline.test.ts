import { expect, test } from 'vitest';
import { courseOf } from '../testing/course-of.ts';
import { outlineOf } from './outline.ts';

function outlined(text: string) {
  const course = courseOf(text);
  return course.chapters.map((chapter) => outlineOf(course, chapter));
}

test('has what the graph, the advice and the practice of a course are made of', () => {
  const text = `\`\`\`moves fen="4k3/8/8/8/8/8/4P3/4K3 w - - 0 30"
30. e4?! Kd7 {:learn[none]} ( 30... Ke7 31. e5 )
\`\`\`

\`\`\`diagram after="1. d4"
\`\`\`
`;
  const [outline] = outlined(text);
  expect(outline?.blocks.map(({ number }) => number)).toEqual([30]);
  const [block] = outline?.blocks ?? [];
  expect(block?.nodes.map(({ key: _, ...node }) => node)).toEqual([
    { index: 0 },
    { index: 1, parent: 0, san: 'e4', bad: 6, aside: true },
    { index: 2, parent: 1, san: 'Kd7', aside: true, learn: 'none' },
    { index: 3, parent: 1, san: 'Ke7', aside: true },
    { index: 4, parent: 3, san: 'e5', aside: true },
  ]);
  expect(outline?.diagrams).toHaveLength(1);
});

test('a move that varies one without a position is still a variation', () => {
  const [outline] = outlined('```moves\n1. e4 e5 2. Ke3 ( 2. Nf3 )\n```\n');
  const nodes = outline?.blocks[0]?.nodes.map(({ san, varies }) => [san, varies]);
  expect(nodes).toEqual([
    [undefined, undefined],
    ['e4', undefined],
    ['e5', undefined],
    ['Nf3', true],
  ]);
});
