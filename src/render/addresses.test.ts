import { expect, test } from 'vitest';
import { renderCourse } from '../site/render/testing/render-course.ts';

const idsOf = (html: string) => [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);

// With `piece-2` as much the page's own as `piece`, the search for a free id never ended.
test('headings and names that begin like ids of the page are free', () => {
  const [html = ''] = renderCourse([
    '## Piece activity\n\n## Board vision\n\n```moves\n1. e4 {:here[page-turner]} e5 2. Nf3\n```\n',
  ]);
  expect(idsOf(html)).toEqual(
    expect.arrayContaining(['piece-activity', 'board-vision', 'page-turner']),
  );
});

test('ids of the page itself are not given again', () => {
  const [html = ''] = renderCourse(['## Page text\n\n## Piece wk\n\n## Board white\n']);
  expect(idsOf(html)).toEqual(['page-text-2', 'piece-wk-2', 'board-white-2']);
});
