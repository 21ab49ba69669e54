import { expect, test } from 'vitest';
import { checkCourse } from '../check/index.ts';
import { courseOf } from '../model/testing/course-of.ts';
import { readNews } from '../read/read-news.ts';
import { compareCourses } from './compare-courses.ts';
import { makeNews } from './make-news.ts';

// With `?` in its name a chapter was linked to by an address that ended before it.
test('news links to chapters whatever their files are called', () => {
  const files = (moves: string) => ({
    'chapters/C# Why? 50%.md': `---\ntitle: One\n---\n\n\`\`\`moves\n${moves}\n\`\`\`\n`,
  });
  const { checked } = checkCourse(courseOf(files('1. e4 e5 2. Nf3')));
  if (!checked) throw new Error('the course has errors');
  const changes = compareCourses(courseOf(files('1. e4')), checked);
  const text = makeNews(changes, { language: 'en', date: '2026-11-25', from: 'x' });
  expect(text).toContain('](../chapters/C%23%20Why%3F%2050%25.md#');
  const chapters = new Set(checked.course.chapters.map(({ file }) => file));
  expect(
    readNews({ path: 'news/1.md', text }, { chapters, media: new Set(), unfit: new Map() } as never)
      .problems,
  ).toEqual([]);
});
