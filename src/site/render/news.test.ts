import { expect, test } from 'vitest';
import { buildCourse, type News } from '../../model/index.ts';
import { readCourse } from '../../read/index.ts';
import { assignAddresses, contextOf, newsId } from '../../render/index.ts';
import { renderNews } from './news.ts';

test('headings of one name have ids of their own, and the same in every rendering', () => {
  const text =
    '---\ntitle: News\ndate: 2026-11-25\n---\n\n## More\n\n## More\n\n<p id="more">x</p>\n';
  const course = buildCourse(
    readCourse({
      settings: { path: 'course.yaml', text: 'title: T\nside: white\n' },
      chapters: [{ path: 'chapters/1.md', text: '---\ntitle: One\n---\n' }],
      games: [],
      media: [],
      news: [{ path: 'news/a.md', text }],
      problems: [],
    }),
  );
  const context = { ...contextOf(course), addresses: assignAddresses(course) };
  for (let time = 0; time < 2; time++) {
    const [{ html } = { html: '' }] = renderNews(context);
    expect([...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id)).toEqual([
      'a-more',
      'a-more-2',
      'a-more-3',
    ]);
  }
});

test('a file name of odd characters makes an id without them', () => {
  const named = (name: string) => newsId({ name } as News);
  expect(named('\u001b[31m x')).toBe('-[31m-x');
  expect(named('2026-11-25')).toBe('2026-11-25');
});
