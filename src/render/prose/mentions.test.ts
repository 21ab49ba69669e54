import { expect, test } from 'vitest';
import { addressAfter } from '../../contract/testing/address-after.ts';
import { renderCourse } from '../../site/render/testing/render-course.ts';

const italian = '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bc4 (3. Bb5 a6) 3... Bc5\n```\n';

function mentions(text: string, language = 'en'): string[] {
  const [page = ''] = renderCourse([text], { language });
  return [...page.matchAll(/<a class="prose-move" href="([^"]*)">(.*?)<\/a>/g)].map(
    ([, href, words = '']) => `${words.replace(/<[^>]*>/g, '')} ${href}`,
  );
}
const to = (words: string, moves: string) => `${words} #${addressAfter(moves)}`;

test('moves with numbers lead to where they stand, in sentences, tables and comments', () => {
  const bc4 = to('3.Bc4', 'e4 e5 Nf3 Nc6 Bc4');
  expect(mentions(`${italian}\nAfter 3.Bc4 we attack.`)).toEqual([bc4]);
  expect(mentions(`Before: 3.Bc4!\n\n${italian}`)).toEqual([bc4]);
  expect(mentions(`${italian}\n| a | b |\n|---|---|\n| 3.Bc4 | 3...Bc5 |\n`)).toEqual([
    bc4,
    to('3...Bc5', 'e4 e5 Nf3 Nc6 Bc4 Bc5'),
  ]);
  expect(mentions('```moves\n1. e4 {Then 1...e5.} e5\n```\n')).toEqual([to('1...e5', 'e4 e5')]);
});

test('in the letters of the language', () => {
  const bc4 = (words: string) => [to(words, 'e4 e5 Nf3 Nc6 Bc4')];
  expect(mentions(`${italian}\nNach 3.Lc4 greifen wir an.`, 'de')).toEqual(bc4('3.Lc4'));
  expect(mentions(`${italian}\nTras 3.Ac4 atacamos.`, 'es')).toEqual(bc4('3.Ac4'));
});

test('what is no move of the chapter, or may be several, stays text', () => {
  for (const words of [
    '3.Bd3',
    '30.Bc4',
    '3.b2-b4',
    'Version 1.e4x',
    '# 3.Bc4',
    '[3.Bc4](https://a.example)',
  ]) {
    expect(mentions(`${italian}\n${words}`), words).toEqual([]);
  }
  const two = '```moves\n1. e4 e5 (1... c5 2. Nf3 d6) 2. Nf3 Nc6\n```\n\n';
  expect(mentions(`${two}After 2.Nf3.`)).toEqual([to('2.Nf3', 'e4 e5 Nf3')]);
  const apart = '```moves\n1. e4 e5 (1... c5 2. d4) (1... e6 2. d4) 2. Nf3\n```\n\n';
  expect(mentions(`${apart}After 2.d4.`)).toEqual([]);
});
