import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { findFiles, NoCourseError } from './find-files.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-files-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

type Files = Readonly<Record<string, string | Uint8Array>>;
let made = 0;

function folderOf(files: Files): string {
  const folder = path.join(work, String(made++));
  mkdirSync(folder);
  for (const [file, content] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
    writeFileSync(path.join(folder, file), content);
  }
  return folder;
}

const sound: Files = { 'course.yaml': 'title: A\nside: white\n', 'chapters/1.md': 'x' };
const read = (files: Files) => findFiles(folderOf({ ...sound, ...files }));
const messages = async (files: Files) =>
  (await read(files)).problems.map(({ place, message }) => `${place.file}: ${message}`);

test('chapters and games in the order of their names, pictures at any depth', async () => {
  const found = await read({
    'chapters/02.md': 'two',
    'chapters/01.md': '\uFEFFone',
    'games/b.pgn': '*',
    'games/a.pgn': Buffer.from('[White "M\u00fcller"]', 'latin1'),
    'media/deep/x.png': '',
  });
  expect(found.chapters.map(({ path: file, text }) => [file, text])).toEqual([
    ['chapters/01.md', 'one'],
    ['chapters/02.md', 'two'],
    ['chapters/1.md', 'x'],
  ]);
  expect(found.games.map(({ text }) => text)).toEqual(['[White "M\u00fcller"]', '*']);
  expect(found.media).toEqual(['media/deep/x.png']);
  expect(found.problems).toEqual([]);
});

describe('no course', () => {
  test.each([
    ['nowhere', /does not exist\. Name the folder of a course/],
    ['0/course.yaml', /is a file, not a folder\. Name the folder that holds course\.yaml/],
  ])('%s', async (name, message) => {
    await expect(findFiles(path.join(work, name))).rejects.toThrow(message);
  });

  test('a folder with settings of another name says how to rename them', async () => {
    const folder = folderOf({ 'course.yml': 'title: A\n' });
    await expect(findFiles(folder)).rejects.toThrow(NoCourseError);
    await expect(findFiles(folder)).rejects.toThrow(/rename that file to course\.yaml/);
  });
});

describe('what is not read is told', () => {
  test.each<[string, Files, string]>([
    [
      'another ending',
      { 'chapters/2.MD': '' },
      'chapters/2.MD: This file is not read: its name does not end with .md.',
    ],
    [
      'a folder of chapters',
      { 'chapters/part/2.md': '' },
      'chapters/part: The .md files in this folder are not read.',
    ],
    [
      'zero bytes, as in UTF-16',
      { 'chapters/2.md': Buffer.from('---\n', 'utf16le') },
      'chapters/2.md: This file is not UTF-8 text from here on.',
    ],
    [
      'too many games',
      { 'games/a.pgn': '*'.repeat(10_000_001) },
      'games/a.pgn: This file has 10.0 MB; a file of games may have 10.0 MB.',
    ],
    ['a file named games', { games: '' }, 'games: This is a file where a folder should be.'],
    ['a file named media', { media: '' }, 'media: This is a file where a folder should be.'],
  ])('%s', async (_what, files, expected) => {
    expect(await messages(files)).toEqual([expected]);
  });

  test('a link that leads nowhere', async () => {
    const folder = folderOf(sound);
    symlinkSync('/nowhere', path.join(folder, 'chapters/2.md'));
    const { problems, chapters } = await findFiles(folder);
    expect(problems).toMatchObject([
      { place: { file: 'chapters/2.md' }, message: 'This name is a link that leads nowhere.' },
    ]);
    expect(chapters).toHaveLength(1);
  });
});

test('what editors and systems keep beside chapters is passed over', async () => {
  const folder = folderOf({
    ...sound,
    'chapters/._1.md': '',
    'chapters/1.md~': '',
    'chapters/notes.txt': '',
    'chapters/pictures/x.png': '',
  });
  symlinkSync('someone@host', path.join(folder, 'chapters/.#1.md'));
  const { problems, chapters } = await findFiles(folder);
  expect(problems).toEqual([]);
  expect(chapters).toHaveLength(1);
});

test('a link in media/ is no picture of the course', async () => {
  const folder = folderOf({ ...sound, 'media/a.png': '' });
  symlinkSync('/etc/passwd', path.join(folder, 'media/b.png'));
  symlinkSync('/etc', path.join(folder, 'media/c'));
  expect((await findFiles(folder)).media).toEqual(['media/a.png']);
});
