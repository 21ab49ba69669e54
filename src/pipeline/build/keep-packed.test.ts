import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { zipBook } from '../../publish/book/index.ts';
import { openPacked } from './keep-packed.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-packed-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

let cache = '';
beforeEach(() => {
  cache = mkdtempSync(path.join(work, 'cache-'));
});
const keptFile = () => path.join(cache, readdirSync(cache)[0] ?? '');

/** Packs a book of these texts; returns it, and those that were packed anew. */
async function pack(...texts: readonly string[]) {
  const packed = await openPacked(cache, '/course');
  const asked: string[] = [];
  const files = texts.map((text) => ({
    path: text.startsWith('picture') ? `${text}.png` : `${text}.xhtml`,
    key: text,
    content() {
      asked.push(text);
      return text;
    },
  }));
  const book = Buffer.from(await zipBook(files, packed));
  await packed.save();
  expect(book.equals(await zipBook(files))).toBe(true);
  return asked.slice(0, asked.length - texts.length);
}

test('files that an earlier build has packed are packed no more, and what is not in the book is forgotten', async () => {
  expect(await pack('one', 'two ♘', 'picture')).toEqual(['one', 'two ♘', 'picture']);
  expect(await pack('one', 'two ♘', 'picture')).toEqual([]);
  expect(await pack('one', 'three', 'picture')).toEqual(['three']);
  expect(await pack('one', 'two ♘', 'picture')).toEqual(['two ♘']);
});

test('nothing is written where the book has the files that it had', async () => {
  await pack('one', 'two');
  const { ino } = statSync(keptFile());
  await pack('two', 'one');
  expect(statSync(keptFile()).ino).toBe(ino);
  await pack('two');
  expect(statSync(keptFile()).ino).not.toBe(ino);
});

test.each<[string, (whole: Buffer) => Buffer]>([
  ['cut short', (whole) => whole.subarray(0, -1)],
  ['changed', (whole) => Buffer.from(whole).fill('x', whole.length - 1)],
  ['empty', () => Buffer.alloc(0)],
])('what is %s counts for nothing', async (_, damage) => {
  await pack('one', 'two');
  writeFileSync(keptFile(), damage(readFileSync(keptFile())));
  expect(await pack('one', 'two')).toEqual(['one', 'two']);
});

test('a cache that cannot be written is done without', async () => {
  cache = path.join(cache, 'file');
  writeFileSync(cache, '');
  expect(await pack('one')).toEqual(['one']);
});
