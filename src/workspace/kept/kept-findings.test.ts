import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, expect, test, vi } from 'vitest';
import { createWorkspace, loadKept, openSyntax, saveKept } from '../index.ts';
import { heldFor } from './held-for.ts';

const work = await mkdtemp(path.join(tmpdir(), 'linewright-kept-'));
afterAll(() => rm(work, { recursive: true }));
let cache: string;
beforeEach(async () => {
  cache = await mkdtemp(path.join(work, 'cache-'));
});

const files = {
  settings: { path: 'course.yaml', text: 'title: A\nid: a\nside: white\n' },
  chapters: [
    {
      path: 'chapters/1.md',
      text: '---\ntitle: One\n---\n\n```moves\n1. e4 e5 {:here[x]} 2. Nf3 Nc6\n```\n',
    },
    { path: 'chapters/2.md', text: '---\ntitle: Two\n---\n\n```moves from="x"\n2. Bc4 =\n```\n' },
  ],
  games: [],
  media: [],
  problems: [],
};

async function keptFile(): Promise<string> {
  const [name = ''] = await readdir(cache);
  return path.join(cache, name);
}

test('what one process kept, another takes for its own', async () => {
  const first = createWorkspace();
  const found = first.update(files).diagnostics;
  expect(found).not.toEqual([]);
  await saveKept(cache, 'a', first.kept());
  const second = createWorkspace({ kept: await loadKept(cache, 'a') }).update(files);
  expect(second.work).toEqual({ read: [], played: [], checked: [] });
  expect(second.diagnostics).toEqual(found);
  expect(await loadKept(cache, 'another course')).toEqual([]);
});

test('the next process knows for which answers all findings hold, unless they were not found together', async () => {
  const held = async () => (await loadKept(cache, 'a')).map(({ checked }) => heldFor(checked));
  const workspace = createWorkspace();
  workspace.update(files);
  await saveKept(cache, 'a', workspace.kept());
  const [first, ...others] = await held();
  expect(first).toBeTypeOf('string');
  expect(others).toEqual([first]);
  const [changed] = [...workspace.kept()];
  workspace.update({ ...files, chapters: files.chapters.slice(1) });
  await saveKept(cache, 'a', [...(changed ? [changed] : []), ...workspace.kept()]);
  expect(await held()).toEqual([undefined, undefined]);
});

test.each([
  ['cut', (text: string) => text.slice(0, -7)],
  ['changed', (text: string) => text.replace('"Nf3"', '"Nh3"')],
  ['empty', () => ''],
  ['of other bytes', () => '\u0000\n{}\nnull'],
])('a file that is %s counts for nothing', async (_how, damage) => {
  const workspace = createWorkspace();
  workspace.update(files);
  await saveKept(cache, 'a', workspace.kept());
  const file = await keptFile();
  const text = await readFile(file, 'utf8');
  await writeFile(file, damage(text));
  expect(await loadKept(cache, 'a')).toEqual([]);
  await saveKept(cache, 'a', workspace.kept());
  expect(await loadKept(cache, 'a')).toHaveLength(2);
});

test('what was sealed with another key counts for nothing', async () => {
  const workspace = createWorkspace();
  workspace.update(files);
  await saveKept(cache, 'a', workspace.kept());
  vi.stubEnv('LINEWRIGHT_CACHE_KEY', 'secret');
  expect(await loadKept(cache, 'a')).toEqual([]);
  vi.unstubAllEnvs();
  expect(await loadKept(cache, 'a')).toHaveLength(2);
});

test('runs at the same time each leave a whole file', async () => {
  const workspace = createWorkspace();
  workspace.update(files);
  await Promise.all(Array.from({ length: 8 }, () => saveKept(cache, 'a', workspace.kept())));
  expect(await loadKept(cache, 'a')).toHaveLength(2);
  expect(await readdir(cache)).toHaveLength(1);
});

test('a cache that cannot be written costs nothing but time', async () => {
  const workspace = createWorkspace();
  workspace.update(files);
  const file = path.join(cache, 'no-folder');
  await writeFile(file, '');
  await saveKept(path.join(file, 'cache'), 'a', workspace.kept());
  expect(await loadKept(path.join(file, 'cache'), 'a')).toEqual([]);
  await rm(file);
});

test('of many courses the oldest are let go', async () => {
  const workspace = createWorkspace();
  workspace.update(files);
  for (let number = 0; number < 60; number++) {
    await saveKept(cache, `course ${number}`, workspace.kept());
  }
  expect(await readdir(cache)).toHaveLength(50);
  expect(await loadKept(cache, 'course 59')).toHaveLength(2);
});

test('chapters that one process has read, another need not', async () => {
  const read = (chapters: typeof files.chapters, course: string) => ({
    ...files,
    chapters,
    course,
  });
  const first = createWorkspace();
  const whole = structuredClone(first.update(read(files.chapters, 'b')).course());
  await saveKept(cache, 'b', first.kept());
  await (await openSyntax(cache, 'b')).save(first.kept());
  const syntaxes = await openSyntax(cache, 'b');
  const second = createWorkspace({ kept: await loadKept(cache, 'b'), syntaxes });
  expect(structuredClone(second.update(files).course())).toEqual(whole);
  expect([...second.kept()].map(({ live }) => live?.wasRead)).toEqual([false, false]);

  // One chapter changes: it is read, and kept beside what is kept of the other.
  const [one, two = { path: '', text: '' }] = files.chapters;
  const changed = { ...two, text: `${two.text}\nWords.\n` };
  const third = createWorkspace({ kept: await loadKept(cache, 'b'), syntaxes });
  structuredClone(third.update(read([one ?? two, changed], 'b')).course());
  expect([...third.kept()].map(({ live }) => live?.wasRead)).toEqual([false, true]);
  await syntaxes.save(third.kept());
  const after = await openSyntax(cache, 'b');
  expect([...third.kept()].map(({ file, text }) => after.get(file, text)?.syntax.file)).toEqual([
    'chapters/1.md',
    'chapters/2.md',
  ]);
});
