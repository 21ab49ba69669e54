import { expect, test } from 'vitest';
import { readableText, renderCourse } from '../site/render/testing/render-course.ts';

const [one = '', two = ''] = renderCourse([
  [
    '```moves\n1. e4 e5 {:here[open-1 "The open game"]} 2. Nf3 {:here[knight-2]} Nc6 3. Nc3\n```',
    '[](pos:open-1), [](pos:knight-2), [words](pos:open-1).',
    '```diagram at="open-1"\nplan: g1-f3\n```',
    '```diagram at="open-1"\ncaption: My own.\n```',
  ].join('\n\n'),
  [
    '```moves from="open-1"\n2. Nc3 Nc6 {:later[late-3]} 3. Nf3 {:here[late-3 "Three knights"]} Nf6\n```',
    '```moves\n1. Nf3 Nc6 2. e4 e5 {:same[knight-2]} 3. Nc3 {:same[late-3]}\n```',
    '[](pos:open-1).',
  ].join('\n\n'),
]);

test('a link without words has the title of its position, else where it stands', () => {
  expect(readableText(one)).toContain('The open game, after 2.Nf3, words.');
  expect(readableText(two)).toContain('The open game.');
});

test('a diagram of a titled position has its title where the author wrote no caption', () => {
  expect(readableText(one)).toContain('The open game. White to move');
  expect(one).toContain('aria-label="The open game. ');
  expect(readableText(one)).toContain('My own. White to move');
});

test('sentences about a named position say its title, and never its name', () => {
  expect(readableText(two)).toContain('“The open game”, after 1...e5 in “Chapter A”');
  expect(readableText(two)).toContain('More on this later, “Three knights”, after 3.Nf3');
  expect(readableText(two)).toContain('The same position as after 2.Nf3 in “Chapter A”');
  for (const page of [one, two]) expect(readableText(page)).not.toMatch(/open-1|knight-2|late-3/);
});
