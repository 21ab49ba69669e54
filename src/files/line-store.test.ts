import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { openLineStore } from './line-store.ts';

const work = mkdtempSync(path.join(tmpdir(), 'lines-'));
let cache = '';
afterAll(() => rmSync(work, { recursive: true, force: true }));
beforeEach(() => {
  cache = mkdtempSync(path.join(work, 'cache-'));
});

const open = (folder = cache) =>
  openLineStore(folder, 'lines-a', { sealedFor: 'x', mostStores: 9 });
const names = Array.from({ length: 200 }, (_, at) => `chapters/${at}.md`);
const textIn = (store: ReturnType<typeof open>) =>
  names.map((name) => store.get(name)?.toString()).join(' ');
const expected = names.map((name) => `${name} in short`).join(' ');

function fill(store: ReturnType<typeof open>): void {
  // What stands in the store is a copy: the caller's bytes may change.
  const line = Buffer.alloc(30);
  for (const name of names) {
    const length = line.write(`${name} in short`);
    store.set(name, line.subarray(0, length));
  }
}

test('what was set is read before it is kept, after that, and by the next run', async () => {
  const store = open();
  fill(store);
  expect(textIn(store)).toBe(expected);
  // What lies on the disk meanwhile has no name.
  expect(readdirSync(cache)).toEqual([]);
  await store.save(new Set(names));
  expect(textIn(store)).toBe(expected);
  expect(textIn(open())).toBe(expected);
  store.set('chapters/7.md', Buffer.from('new'));
  await store.save(new Set(['chapters/7.md']));
  expect(open().get('chapters/7.md')?.toString()).toBe('new');
});

test('of a line a part is given, wherever it lies', async () => {
  const partOf = (store: ReturnType<typeof open>) => store.get('chapters/7.md', 5, 11)?.toString();
  const store = open();
  fill(store);
  const parts = [partOf(store)];
  await store.save(new Set(names));
  parts.push(partOf(store), partOf(open()));
  expect(parts).toEqual(Array(3).fill('ers/7.'));
});

test('a folder that cannot be written leaves all in memory', async () => {
  const file = path.join(cache, 'a-file');
  writeFileSync(file, '');
  const store = open(path.join(file, 'below'));
  store.set('a', Buffer.from('one'));
  store.set('b', Buffer.from('two'));
  await store.save(new Set(['a', 'b']));
  expect([store.get('a'), store.get('b')].map(String)).toEqual(['one', 'two']);
});
