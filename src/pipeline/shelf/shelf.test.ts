import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { filesIn, loadCourse, loadForReaders } from '../load-course.ts';
import { type CourseSeen, lookWithin, openShelf } from './index.ts';
import { keepCourse } from './keep-course.ts';
import { coursesNamedIn } from './links-in.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-shelf-'));
const cache = process.env.LINEWRIGHT_CACHE;
beforeAll(() => {
  process.env.LINEWRIGHT_CACHE = path.join(work, 'cache');
});
afterAll(() => {
  if (cache === undefined) delete process.env.LINEWRIGHT_CACHE;
  else process.env.LINEWRIGHT_CACHE = cache;
  rmSync(work, { recursive: true, force: true });
});

const course = (id: string, text: string, front = '') => ({
  [`${id}/course.yaml`]: `title: The ${id}\nid: ${id}\nside: white\n`,
  [`${id}/chapters/1.md`]: `---\ntitle: One\n${front}---\n\n${text}\n`,
});
const slav = course('slav', '```moves\n1. d4 d5 2. c4 c6 3. Nf3 {:here[tabiya "The tabiya"]}\n```');
const french = (text: string) => course('french', text);

function shelfOf(name: string, files: Readonly<Record<string, string>>): string {
  const folder = path.join(work, name);
  for (const [file, text] of Object.entries(files)) {
    const full = path.join(folder, file);
    mkdirSync(path.dirname(full), { recursive: true });
    writeFileSync(full, text);
  }
  return folder;
}

const links = '[There](pos:slav/tabiya), [](pos:slav/tabiya), [no](pos:slav/tabya).';

test('a link leads beside the course in its shelf, to the address of the shelf alone, and nowhere without one', async () => {
  const yaml = 'title: All\ncourses: [french, slav]\n';
  const folder = shelfOf('links', { 'shelf.yaml': yaml, ...slav, ...french(links) });
  const shelf = await openShelf(folder);
  const own = path.join(folder, 'french');
  const lookAround = lookWithin(shelf, new Map(), 'https://club.example/all');
  const within = await loadForReaders(own, { lookAround });
  const place = { course: 'The slav', title: 'The tabiya' };
  expect(within.course.siblings).toEqual({
    'slav/tabiya': {
      ...place,
      beside: '../slav/1.html#tabiya',
      web: 'https://club.example/all/slav/1.html#tabiya',
    },
  });
  expect(within.diagnostics.map(({ hint }) => hint)).toEqual(['Did you mean `slav/tabiya`?']);

  const alone = await loadCourse(own);
  expect(alone.course.siblings).toEqual({ 'slav/tabiya': place });
  expect(alone.diagnostics.map(({ rule }) => rule)).toEqual(['label-unknown']);

  writeFileSync(path.join(folder, 'shelf.yaml'), `${yaml}site: https://club.example/\n`);
  const address = 'https://club.example/slav/1.html#tabiya';
  expect((await loadCourse(own)).course.siblings?.['slav/tabiya']?.web).toBe(address);
  writeFileSync(path.join(folder, 'shelf.yaml'), 'title: All\ncourses: [slav]\n');
  const unnamed = await loadCourse(own);
  expect(unnamed.course.siblings).toBeUndefined();
  expect(new Set(unnamed.diagnostics.map(({ rule }) => rule))).toEqual(new Set(['shelf-link']));
});

test('what the other course takes back is missed at once, though nothing has changed here', async () => {
  const folder = shelfOf('taken', {
    'shelf.yaml': 'title: All\ncourses: [french, slav]\n',
    ...slav,
    ...french('[There](pos:slav/tabiya).'),
  });
  const own = path.join(folder, 'french');
  expect((await loadCourse(own)).diagnostics).toEqual([]);
  shelfOf('taken', course('slav', '```moves\n1. d4 d5 2. c4 c6 3. Nf3\n```'));
  expect((await loadCourse(own)).diagnostics.map(({ rule }) => rule)).toEqual(['label-unknown']);
  // A draft is not published: its names lead nobody there.
  shelfOf('taken', course('slav', '```moves\n1. d4 {:here[tabiya]}\n```', 'draft: true\n'));
  expect((await loadCourse(own)).diagnostics.map(({ rule }) => rule)).toEqual(['label-unknown']);
});

test('two courses of one id have one finding', async () => {
  const twin = french('[There](pos:slav/tabiya).');
  twin['french/course.yaml'] = 'title: The other\nid: slav\nside: black\n';
  const yaml = 'title: All\ncourses: [french, slav]\n';
  const shelf = await openShelf(shelfOf('twins', { 'shelf.yaml': yaml, ...slav, ...twin }));
  const lookAround = lookWithin(shelf, new Map());
  const seen: CourseSeen[] = [];
  for (const one of shelf.courses) {
    const loaded = await loadCourse(shelf.folderOf(one), { lookAround });
    seen.push({ course: one, entry: loaded.entry(), diagnostics: loaded.diagnostics });
  }
  expect(shelf.findings(seen).all.map(({ rule }) => rule)).toEqual(['shelf-setting']);
});

test('advice in drafts and before the subject is no conflict', async () => {
  const folder = shelfOf('drafts', {
    'shelf.yaml': 'title: All\ncourses: [slav, french]\n',
    ...slav,
    ...french('Words.'),
    'french/chapters/2.md':
      '---\ntitle: Two\ndraft: true\n---\n\n```moves\n1. e4 e6 2. d4 {:allow[shelf-advice-conflict yes]}\n```\n',
  });
  const shelf = await openShelf(folder);
  const seen: CourseSeen[] = [];
  for (const one of shelf.courses) {
    const loaded = await loadCourse(shelf.folderOf(one));
    seen.push({ course: one, entry: loaded.entry(), diagnostics: loaded.diagnostics });
  }
  expect(shelf.findings(seen).all).toEqual([]);
});

test('links, and folders within folders, are no courses', async () => {
  const folder = shelfOf('folders', {
    'shelf.yaml': 'title: All\ncourses: [slav, again, SLAV/, other, slav/chapters, notes.txt]\n',
    ...slav,
    'notes.txt': '',
    'elsewhere/course.yaml': 'title: x\nside: white\n',
  });
  symlinkSync('slav', path.join(folder, 'again'));
  symlinkSync('elsewhere', path.join(folder, 'other'));
  const { files } = await openShelf(folder);
  expect(files.courses.map((one) => one.path)).toEqual(['slav']);
  expect(files.problems.map(({ message }) => message)).toEqual([
    '`again` is the course `slav`, which line 2 names already.',
    expect.stringMatching(/SLAV/),
    '`other` is a link, or lies behind one: no course is read through it.',
    'The folder `slav/chapters` is no course: it has no course.yaml.',
    '`notes.txt` is a file, not a folder.',
  ]);
});

test('courses that are named are seen in the text', () => {
  const named = (text: string) => [
    ...coursesNamedIn({
      chapters: [{ path: 'chapters/1.md', text }],
      games: [],
      media: [],
      problems: [],
    }),
  ];
  expect(named('[a](pos:slav/x) [b](POS:the%20one/y) [c](pos:%D0%B0%2Fb)\n\n[d]: pos:e/f')).toEqual(
    ['slav', 'the one', 'а', 'e'],
  );
  expect(named('[a](pos:x) http://pos/y')).toEqual([]);
});

test('what is kept of a course holds while none of its files changes, pictures and those beside it too', async () => {
  // All other tests compare what is kept with what is made anew.
  vi.stubEnv('LINEWRIGHT_COMPARE_FRESH', '');
  const folder = path.join(shelfOf('kept', slav), 'slav');
  const keeper = async (...inputs: string[]) =>
    keepCourse<number>('test', folder, await filesIn(folder), inputs);
  await (await keeper()).write(1);
  expect(await (await keeper()).read()).toBe(1);
  expect(await (await keeper('other')).read()).toBeUndefined();
  for (const file of ['chapters/1.md', 'media/a.txt', 'theme.css', 'rules/own.mjs']) {
    await (await keeper()).write(2);
    shelfOf('kept', { [`slav/${file}`]: `---\ntitle: ${file}\n---\n` });
    expect([file, await (await keeper()).read()]).toEqual([file, undefined]);
  }
  vi.unstubAllEnvs();
});
