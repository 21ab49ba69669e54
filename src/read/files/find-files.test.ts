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
    'games/c.pgn': Buffer.from('\uFEFF[White "M\u00fcller"]', 'utf16le'),
    'media/deep/x.png': '',
  });
  expect(found.chapters.map(({ path: file, text }) => [file, text])).toEqual([
    ['chapters/01.md', 'one'],
    ['chapters/1.md', 'x'],
    ['chapters/02.md', 'two'],
  ]);
  expect(found.games.map(({ text }) => text)).toEqual([
    '[White "M\u00fcller"]',
    '*',
    '[White "M\u00fcller"]',
  ]);
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
      'UTF-16',
      { 'chapters/2.md': Buffer.from('\uFEFF---\n', 'utf16le') },
      'chapters/2.md: This file is UTF-16, not UTF-8.',
    ],
    [
      'UTF-16 without a mark, big-endian, in news',
      { 'news/2.md': Buffer.from('---\n', 'utf16le').swap16() },
      'news/2.md: This file is UTF-16, not UTF-8.',
    ],
    [
      'UTF-16 in the settings',
      { 'course.yaml': Buffer.from('title: A\nside: white\n', 'utf16le') },
      'course.yaml: This file is UTF-16, not UTF-8.',
    ],
    [
      'zero bytes',
      { 'chapters/2.md': 'Text\0.' },
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

  test('a link, also one within the course, and a linked folder', async () => {
    const folder = folderOf({ ...sound, 'games/a.pgn': '*', 'media/a.png': '' });
    symlinkSync('/nowhere', path.join(folder, 'chapters/2.md'));
    symlinkSync('1.md', path.join(folder, 'chapters/3.md'));
    symlinkSync('../../media', path.join(folder, 'chapters/pictures'));
    symlinkSync('/etc/passwd', path.join(folder, 'media/b.png'));
    symlinkSync('/etc', path.join(folder, 'media/c'));
    symlinkSync('someone@host', path.join(folder, 'media/.#b.png'));
    symlinkSync('games', path.join(folder, 'news'));
    const { problems, chapters, media, news } = await findFiles(folder);
    expect(problems.map(({ place, message }) => `${place.file}: ${message}`)).toEqual(
      ['chapters/2.md', 'chapters/3.md', 'chapters/pictures', 'news', 'media/b.png', 'media/c'].map(
        (file) => `${file}: This is a link, and a course is read without following links.`,
      ),
    );
    expect(chapters).toHaveLength(1);
    expect(media).toEqual(['media/a.png']);
    expect(news).toEqual([]);
  });

  test.each(['chapters', 'games', 'media', 'news', 'course.yaml'])(
    'a linked %s, in a course that is itself reached by a link',
    async (name) => {
      const other = folderOf({
        'chapters/1.md': 'secret',
        'games/a.pgn': 'secret',
        'media/a.png': 'secret',
        'news/1.md': 'secret',
        'course.yaml': 'secret: 1\n',
      });
      const folder = folderOf(sound);
      rmSync(path.join(folder, name), { recursive: true, force: true });
      symlinkSync(path.join(other, name), path.join(folder, name));
      symlinkSync(folder, `${folder}-link`);
      const found = await findFiles(`${folder}-link`);
      expect(found.problems).toMatchObject([
        { place: { file: name }, message: expect.stringContaining('This is a link') },
      ]);
      expect(JSON.stringify(found)).not.toMatch(/secret|a\.png/);
    },
  );

  test('a name that is no text, as an old archive may leave it', async () => {
    const folder = folderOf(sound);
    writeFileSync(Buffer.from(`${folder}/chapters/\u00e9.md`, 'latin1'), '');
    expect((await findFiles(folder)).problems).toMatchObject([
      { place: { file: 'chapters/\uFFFD.md' }, message: 'The name of this is not UTF-8 text.' },
    ]);
  });

  test('a folder named as a chapter', async () => {
    const folder = folderOf({ ...sound, 'chapters/2.md/notes.txt': '' });
    expect((await findFiles(folder)).problems).toMatchObject([
      { place: { file: 'chapters/2.md' }, message: 'This is a folder where a file should be.' },
    ]);
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
