import {
  lstatSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { replaceFile } from './replace-file.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-replace-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));
let folder: string;
const at = (name: string) => path.join(folder, name);
beforeEach(() => {
  folder = mkdtempSync(path.join(work, 'folder-'));
});

test('a file is replaced, and nothing is left beside it', async () => {
  writeFileSync(at('a.epub'), 'old');
  await replaceFile(at('a.epub'), 'new');
  await replaceFile(at('deep/b.epub'), Buffer.from('new'));
  expect(readFileSync(at('a.epub'), 'utf8')).toBe('new');
  expect(readdirSync(folder).sort()).toEqual(['a.epub', 'deep']);
});

test('nothing is written through a link, whatever its name', async () => {
  writeFileSync(at('precious'), 'precious');
  symlinkSync(at('precious'), at('a.epub'));
  symlinkSync(at('precious'), at('a.epub.linewright-new'));
  await replaceFile(at('a.epub'), 'new');
  expect(readFileSync(at('precious'), 'utf8')).toBe('precious');
  expect(lstatSync(at('a.epub')).isFile()).toBe(true);
  expect(readFileSync(at('a.epub'), 'utf8')).toBe('new');
});

test('several at once: one of them is there, whole', async () => {
  const texts = ['a', 'b', 'c', 'd'].map((sign) => sign.repeat(100_000));
  await Promise.all(texts.map((text) => replaceFile(at('a.pgn'), text)));
  expect(texts).toContain(readFileSync(at('a.pgn'), 'utf8'));
  expect(readdirSync(folder)).toEqual(['a.pgn']);
});

test('what cannot be written leaves nothing', async () => {
  await expect(replaceFile(folder, 'new')).rejects.toThrow();
  expect(readdirSync(work).filter((name) => name.includes('linewright-new'))).toEqual([]);
});
