import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { FileRefusedError } from '../files/index.ts';
import { loadCourse } from './load-course.ts';
import { mendFiles } from './mend-files.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-mend-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

let made = 0;
let course: string;
const at = (name: string) => path.join(course, name);
const chapter = '\uFEFF---\r\ntitle: \u00e9\r\n---\r\n\r\n```moves\r\n4. e4\r\n```\r\n';
beforeEach(() => {
  course = path.join(work, String(made++));
  for (const folder of ['chapters', 'games']) mkdirSync(at(folder), { recursive: true });
  writeFileSync(at('course.yaml'), 'title: A\nid: a\nside: both\n');
  writeFileSync(at('chapters/1.md'), chapter);
});

const mend = async () => mendFiles(course, await loadCourse(course));

test('a chapter keeps its mark, its line ends and who may write it', async () => {
  // More than the mask of this process lets a new file have.
  chmodSync(at('chapters/1.md'), 0o666);
  expect(await mend()).toBe(1);
  expect(readFileSync(at('chapters/1.md'), 'utf8')).toBe(chapter.replace('4.', '1.'));
  expect(statSync(at('chapters/1.md')).mode & 0o777).toBe(0o666);
  expect(readdirSync(at('chapters'))).toEqual(['1.md']);
  expect((await loadCourse(course)).diagnostics.flatMap(({ fixes }) => fixes ?? [])).toEqual([]);
});

test('an id that is missing is added to settings as they are written', async () => {
  writeFileSync(at('course.yaml'), '\uFEFFtitle: A\r\nside: both\r\n');
  expect(await mend()).toBe(2);
  expect(readFileSync(at('course.yaml'), 'utf8')).toBe('\uFEFFtitle: A\r\nid: a\r\nside: both\r\n');
});

const wide = (text: string) => Buffer.from(text, 'utf16le');

test.each<[string, (text: string) => Buffer]>([
  // As section 4.1 of the PGN standard has it.
  ['ISO 8859-1', (text) => Buffer.from(text, 'latin1')],
  ['UTF-8', (text) => Buffer.from(text)],
  ['UTF-16', (text) => wide(`\uFEFF${text}`)],
  ['UTF-16, big-endian', (text) => wide(`\uFEFF${text}`).swap16()],
  ['UTF-16 without a mark', wide],
])('a game file in %s keeps its encoding', async (_, encode) => {
  const game = '[White "M\u00fcller \u0080"]\n\n7. e4 e5 *\n';
  writeFileSync(at('games/a.pgn'), encode(game));
  const block = '```game file="games/a.pgn"\n```\n';
  writeFileSync(at('chapters/1.md'), `---\ntitle: A\n---\n\n${block}`);
  expect(await mend()).toBe(1);
  expect(readFileSync(at('games/a.pgn'))).toEqual(encode(game.replace('7.', '1.')));
});

test('nothing is written through a link that took the place of a chapter', async () => {
  const loaded = await loadCourse(course);
  const outside = path.join(work, `outside-${made}.md`);
  writeFileSync(outside, chapter);
  rmSync(at('chapters/1.md'));
  symlinkSync(outside, at('chapters/1.md'));
  await expect(mendFiles(course, loaded)).rejects.toThrow(FileRefusedError);
  rmSync(at('chapters'), { recursive: true });
  mkdirSync(`${outside}.d`);
  writeFileSync(`${outside}.d/1.md`, chapter);
  symlinkSync(`${outside}.d`, at('chapters'));
  await expect(mendFiles(course, loaded)).rejects.toThrow(/This is a link/);
  expect(readFileSync(outside, 'utf8')).toBe(chapter);
  expect(readFileSync(`${outside}.d/1.md`, 'utf8')).toBe(chapter);
  expect(readdirSync(`${outside}.d`)).toEqual(['1.md']);
});

test('what the author saved after the check is left as it is', async () => {
  const loaded = await loadCourse(course);
  const saved = chapter.replace('title', 'summary: New\r\ntitle');
  writeFileSync(at('chapters/1.md'), saved);
  await expect(mendFiles(course, loaded)).rejects.toThrow(/changed after it was checked/);
  expect(readFileSync(at('chapters/1.md'), 'utf8')).toBe(saved);
});
