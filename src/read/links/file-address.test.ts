import { expect, test } from 'vitest';
import { renderCourse } from '../../site/render/testing/render-course.ts';
import { decodeAddress, fileAddress } from './file-address.ts';

test.each([
  'chapters/C#.md',
  'chapters/Why?.md',
  'chapters/50% plan.md',
  'media/%41.png',
  'a b/ä.md',
])('%s is found again by its address', (file) => {
  const address = fileAddress(file);
  expect(decodeAddress(address)).toBe(file);
  expect(decodeAddress(new URL(address, 'https://a/').pathname)).toBe(`/${file}`);
});

test('an address with a stray % is taken as it stands', () => {
  expect(decodeAddress('50%.md')).toBe('50%.md');
});

test('a link to a file whose name has signs of addresses leads there', () => {
  const media = ['media/C#.pdf'];
  const [html] = renderCourse(['[a](../media/C%23.pdf#page=2) [b](media/C%23.pdf)'], { media });
  expect(html).toContain('<a href="media/C%23.pdf#page=2">a</a> <a href="media/C%23.pdf">b</a>');
});
