import { expect, test } from 'vitest';
import { courseOf } from '../../model/testing/course-of.ts';
import { chooseText } from './choose-text.ts';

test('a part of a chapter is led to by its heading, also where a position has the heading’s name', () => {
  const course = courseOf(
    '# 1\n\n## Main\n\n```moves\n1. e4 {:here[main]} e5\n```\n\n## Other\n\nWords.',
  );
  const pageOf = (section: string) => chooseText(course, { chapter: '1', section }).page;
  expect(pageOf('Main')).toBe('1.html#main-2');
  expect(pageOf('Other')).toBe('1.html#other');
});

test('a position that a diagram names is a letter’s as well', () => {
  const course = courseOf('```diagram after="1. e4 e5"\ncaption: Here. :here[open]\n```');
  const { chapters } = chooseText(course, { positions: ['open'] });
  expect(chapters[0]?.blocks[0]).toMatchObject({
    position: { fen: expect.stringContaining(' 0 2') },
  });
});
