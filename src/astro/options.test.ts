import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { type CourseOptions, readOptions } from './options.ts';
import { placeIn } from './place.ts';

const root = pathToFileURL(`${process.cwd()}/`);
const demo = { course: './demo-course', path: '/courses/demo/' };

const read =
  (...options: readonly unknown[]) =>
  () =>
    readOptions(
      options.length === 1 ? (options[0] as CourseOptions) : (options as CourseOptions[]),
      root,
    );

test('a course is found from the root of the project, with or without slashes around its path', () => {
  for (const at of ['/courses/demo/', 'courses/demo', '/courses/demo']) {
    const [found] = read({ ...demo, path: at })();
    expect(found).toMatchObject({ folder: `${process.cwd()}/demo-course`, path: 'courses/demo' });
  }
});

test.each([
  ['a folder that is not there', [{ ...demo, course: './lost' }], /`\.\/lost`.*lost is not there/],
  ['a folder that is no course', [{ ...demo, course: './src' }], /src has no `course\.yaml`/],
  ['a path that leaves the site', [{ ...demo, path: '../up one' }], /`path` is not as it must be/],
  ['a missing path', [{ course: './demo-course' }], /`path` is not as it must be/],
  ['an option that there is not', [{ ...demo, layuot: 'x' }], /layuot/],
  [
    'two courses in one place',
    [demo, { ...demo, path: '/courses' }],
    /Two courses would stand in one/,
  ],
  ['one course below another', [demo, { ...demo, path: '/courses/demo/two' }], /Two courses/],
  ['the second of two', [demo, { ...demo, path: 7 }], /`path` of course 2/],
])('%s is refused', (_, options, message) => {
  expect(read(...options)).toThrow(message);
});

test('a shelf is refused, with what to write for its courses', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'linewright-astro-shelf-'));
  writeFileSync(path.join(folder, 'shelf.yaml'), 'title: All\ncourses: [slav]\n');
  const options = { course: folder, path: '/courses' };
  try {
    expect(read(options)).toThrow(/is a shelf of several courses/);
    expect(read(options)).toThrow(
      expect.objectContaining({ hint: expect.stringContaining('a `path` of its own') }),
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test.each([
  ['/', undefined, '/courses/demo/', undefined],
  ['/club', 'https://a.example', '/club/courses/demo/', 'https://a.example/club/courses/demo'],
  ['club/', 'https://a.example/x/', '/club/courses/demo/', 'https://a.example/club/courses/demo'],
])('base %s and site %s say where it stands', (base, site, path, address) => {
  const [course] = read(demo)();
  if (course === undefined) throw new Error('not read');
  const place = placeIn(
    { base, site, cacheDir: new URL('cache/', root), trailingSlash: 'ignore' },
    course,
  );
  expect(place.root).toBe(path);
  expect(place.site).toBe(address);
});
