/** Titles and ids that are too long are findings, and no failed build. */
import { expect, test } from 'vitest';
import { courseId } from '../../model/index.ts';
import { courseOf } from '../../model/testing/course-of.ts';
import { readCourse } from '../index.ts';

const letters = (count: number) => 'x'.repeat(count);

function problemsOf({
  settings = 'title: A\nid: a\nside: white\n',
  file = 'chapters/1.md',
  front = 'title: One',
}) {
  const { problems, chapters } = readCourse({
    settings: { path: 'course.yaml', text: settings },
    chapters: [{ path: file, text: `---\n${front}\n---\n\nText.\n` }],
    games: [],
    media: [],
    problems: [],
  });
  const all = [...problems, ...chapters.flatMap((chapter) => chapter.problems)];
  return all.map(({ place, message }) => `${place.file}:${place.start.line} ${message}`);
}

test.each([
  [
    'the title of a course',
    { settings: `title: ${letters(300)}\nid: a\nside: white\n` },
    'course.yaml:1 `title` must be a title of up to 200 letters.',
  ],
  [
    'the id of a course',
    { settings: `title: A\nid: ${letters(300)}\nside: white\n` },
    'course.yaml:2 `id` must be shorter, since files are named by it.',
  ],
  [
    'the title of a chapter',
    { front: `title: ${letters(300)}` },
    'chapters/1.md:2 `title` must be a title of up to 200 letters.',
  ],
  [
    'the id of a chapter',
    { front: `title: One\nid: ${letters(300)}` },
    'chapters/1.md:1 The name of this chapter is too long for the files that are made of it.',
  ],
  [
    'the file name of a chapter, in letters of three bytes',
    { file: `chapters/${'字'.repeat(80)}.md` },
    `chapters/${'字'.repeat(80)}.md:1 The name of this chapter is too long for the files that are made of it.`,
  ],
])('%s', (_, files, message) => {
  expect(problemsOf(files)).toEqual([message]);
});

test('titles of 200 letters are none', () => {
  const title = `title: ${letters(200)}`;
  expect(problemsOf({ settings: `${title}\nid: a\nside: white\n`, front: title })).toEqual([]);
});

test('an id that is made of a title is cut where no file could have its name', () => {
  const course = courseOf('Text.');
  const { id: _, ...settings } = course.settings;
  const named = (title: string) => courseId({ ...course, settings: { ...settings, title } });
  expect(named(letters(200))).toBe(letters(200));
  expect(named('字'.repeat(80))).toBe('字'.repeat(66));
});
