import { expect, test } from 'vitest';
import { addressAfter } from '../../contract/testing/address-after.ts';
import { renderCourse } from '../../site/render/testing/render-course.ts';

/** What the page's moves tell of other places: `id: addresses and moves`. */
function told(page = ''): string[] {
  const links = page.matchAll(/<a class="move" id="([^"]*)"[^>]*?data-also="([^"]*)"/g);
  return [...links].map(([, id, also]) => `${id}: ${also}`);
}

const met = addressAfter('d4 d5 c4 e6');

test('two orders that meet tell of each other once, at their first common position', () => {
  const [one, two] = renderCourse([
    '```moves\n1. d4 d5 2. c4 e6 {:here[qgd]} 3. Nc3 Nf6\n```\n',
    '```moves\n1. c4 e6 2. d4 d5 {:same[qgd]} 3. Nc3 Nf6\n```\n',
  ]);
  expect(told(one)).toEqual([`qgd: 2.html#${met} 2...d5`]);
  expect(told(two)).toEqual([`${met}: 1.html#qgd 2...e6`]);
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
  const before = addressAfter('c4 e6 d4');
  // The name of a line that ends with that position.
  const line = '.d424';
  expect(told(page)).toEqual([
    `qgd: #${met} 2...d5`,
    `${before}: #${before}${line} 2.c4`,
    `${met}: #qgd 2...e6`,
    `${before}${line}: #${before} 2.d4`,
    `${met}${line}: #qgd 2...e6`,
    `${met}.e2em: #${met} 2...d5`,
  ]);
});
