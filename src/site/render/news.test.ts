import { expect, test } from 'vitest';
import { buildCourse, type News } from '../../model/index.ts';
import { readCourse } from '../../read/index.ts';
import { assignAddresses, contextOf, newsId } from '../../render/index.ts';
import { renderNews } from './news.ts';

function newsOf(text: string) {
  const course = buildCourse(
    readCourse({
      settings: { path: 'course.yaml', text: 'title: T\nside: white\n' },
      chapters: [{ path: 'chapters/1.md', text: '---\ntitle: One\n---\n' }],
      games: [],
      media: [],
      news: [{ path: 'news/a.md', text: `---\ntitle: News\ndate: 2026-11-25\n---\n\n${text}` }],
      problems: [],
    }),
  );
  return { ...contextOf(course), addresses: assignAddresses(course) };
}

test('what notes and HTML speak of by an id is there', () => {
  const context = newsOf(
    'A[^n] and B.\n\n<p id="p" aria-describedby="more">x</p>\n\n## More\n\n[^n]: A note.\n',
  );
  const [{ html } = { html: '' }] = renderNews(context);
  const ids = new Set([...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id));
  const spoken = [...html.matchAll(/ aria-(?:describedby|labelledby)="([^"]*)"/g)];
  expect(spoken.map(([, id]) => id)).toContain('a-footnote-label');
  for (const [, id] of spoken) expect(ids).toContain(id);
});

test('headings of one name have ids of their own, and the same in every rendering', () => {
  const context = newsOf('## More\n\n## More\n\n<p id="more">x</p>\n');
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
