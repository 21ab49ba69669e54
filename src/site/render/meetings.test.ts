import { expect, test } from 'vitest';
import { renderCourse } from './testing/render-course.ts';

/** What the page's moves tell of other places: `id: addresses and moves`. */
function told(page = ''): string[] {
  const links = page.matchAll(/<a class="move" id="([^"]*)"[^>]*?data-also="([^"]*)"/g);
  return [...links].map(([, id, also]) => `${id}: ${also}`);
}

test('two orders that meet tell of each other once, at their first common position', () => {
  const [one, two] = renderCourse([
    '```moves\n1. d4 d5 2. c4 e6 {:here[qgd]} 3. Nc3 Nf6\n```\n',
    '```moves\n1. c4 e6 2. d4 d5 {:same[qgd]} 3. Nc3 Nf6\n```\n',
  ]);
  expect(told(one)).toEqual(['qgd: 2.html#b1-2b-d5 2...d5']);
  expect(told(two)).toEqual(['b1-2b-d5: 1.html#qgd 2...e6']);
});

test('a shared beginning, and a block that goes on from a name, are no meetings', () => {
  const pages = renderCourse([
    '```moves\n1. d4 d5 2. c4 {:here[start]} 2... e6 ( 2... c6 )\n```\n',
    '```moves\n1. d4 d5 2. c4 dxc4\n```\n\n```moves from="start"\n2... e5\n```\n',
  ]);
  expect(pages.flatMap(told)).toEqual([]);
});

test('of each other way the first place is told, also within the chapter', () => {
  const [page] = renderCourse([
    '```moves\n1. d4 d5 2. c4 e6 {:here[qgd]}\n```\n\n```moves\n1. c4 e6 2. d4 d5 {:same[qgd]}\n```\n\n' +
      '```moves\n1. d4 e6 2. c4 d5 {:same[qgd]}\n```\n\n```moves\n1. d4 d5 2. c4 e6 3. Nf3\n```\n',
  ]);
  expect(told(page)).toEqual([
    'qgd: #b2-2b-d5 2...d5',
    'b2-2-d4: #b3-2-c4 2.c4',
    'b2-2b-d5: #qgd 2...e6',
    'b3-2-c4: #b2-2-d4 2.d4',
    'b3-2b-d5: #qgd 2...e6',
    'b4-2b-e6: #b2-2b-d5 2...d5',
  ]);
});
