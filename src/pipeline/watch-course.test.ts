import {
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { afterAll, afterEach, beforeEach, expect, test } from 'vitest';
import { type CourseWatch, watchCourse } from './watch-course.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-watch-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

let made = 0;
let course: string;
let watching: CourseWatch;
/** What the chapter held each time that a change was told. */
let told: string[];

const at = (name: string) => path.join(course, name);
const chapter = (folder = course) => path.join(folder, 'chapters/1.md');

function make(folder: string, text: string): void {
  mkdirSync(path.join(folder, 'chapters'), { recursive: true });
  writeFileSync(path.join(folder, 'course.yaml'), '');
  writeFileSync(chapter(folder), text);
}

function read(): string {
  try {
    return readFileSync(chapter(), 'utf8');
  } catch {
    return 'gone';
  }
}

async function start(folder = course): Promise<void> {
  told = [];
  watching = watchCourse(folder, () => told.push(read()), 50);
  await watching.ready;
}

/** Time for what has happened to be told: in steps, each of which hears of what came while the process stood still. */
async function quiet(): Promise<void> {
  for (let step = 0; step < 10; step++) await wait(30);
}

/** Waits until a change was told with this text. */
const tells = (text: string) => expect.poll(() => told.at(-1)).toBe(text);

beforeEach(() => {
  course = path.join(work, String(made++));
  make(course, 'a');
});
afterEach(() => watching.close());

test('a change, a new file in a new folder', async () => {
  await start();
  writeFileSync(chapter(), 'b');
  await tells('b');
  const before = told.length;
  mkdirSync(at('news'));
  writeFileSync(at('news/1.md'), '');
  await expect.poll(() => told.length).toBeGreaterThan(before);
});

test('an editor that empties a file before it writes it', async () => {
  await start();
  writeFileSync(chapter(), '');
  await wait(40);
  writeFileSync(chapter(), 'b');
  await tells('b');
  expect(told).not.toContain('');
  // A file that stays empty is told.
  writeFileSync(chapter(), '');
  await tells('');
});

test('the second of two quick saves is told', async () => {
  await start();
  for (let pause = 15; pause < 60; pause += 3) {
    writeFileSync(chapter(), `first ${pause}`);
    await wait(pause);
    writeFileSync(chapter(), `second ${pause}`);
    await tells(`second ${pause}`);
    await wait(60);
  }
});

test('what is there at first, and what is no file of the course, is not told', async () => {
  await start();
  await quiet();
  expect(told).toEqual([]);
  mkdirSync(at('site'));
  writeFileSync(at('site/index.html'), '');
  writeFileSync(at('notes.txt'), '');
  mkdirSync(path.join(work, `aside-${made}`));
  symlinkSync(path.join(work, `aside-${made}`), at('chapters/link'));
  await expect.poll(() => told.length).toBeGreaterThan(0);
  await quiet();
  const after = told.length;
  // A link is told of; what lies behind it is not.
  writeFileSync(path.join(work, `aside-${made}`, '1.md'), '');
  await quiet();
  expect(told).toHaveLength(after);
});

test('the chapters are moved away and come back', async () => {
  await start();
  renameSync(at('chapters'), at('aside'));
  await tells('gone');
  renameSync(at('aside'), at('chapters'));
  await tells('a');
  writeFileSync(chapter(), 'b');
  await tells('b');
});

test('the course is moved away and comes back', async () => {
  await start();
  renameSync(course, `${course}-aside`);
  await tells('gone');
  writeFileSync(chapter(`${course}-aside`), 'b');
  renameSync(`${course}-aside`, course);
  await tells('b');
  writeFileSync(chapter(), 'c');
  await tells('c');
});

test('the course is away for a moment', async () => {
  await start();
  renameSync(course, `${course}-aside`);
  renameSync(`${course}-aside`, course);
  await quiet();
  writeFileSync(chapter(), 'b');
  await tells('b');
});

test('another course takes its place, also behind a link', async () => {
  make(`${course}-other`, 'other');
  symlinkSync(course, `${course}-link`);
  await start(`${course}-link`);
  renameSync(course, `${course}-aside`);
  renameSync(`${course}-other`, course);
  await tells('other');
  writeFileSync(chapter(), 'b');
  await tells('b');
});

test('a course that is not there yet', async () => {
  rmSync(course, { recursive: true });
  await start();
  await wait(120);
  make(course, 'new');
  await tells('new');
});
